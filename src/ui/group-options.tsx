import type { GroupOptions, SchwaPolicy } from '../analyze/types.ts';
import { LONGEST_WORDS, WEAK_VOWELS } from './describe-options.ts';
import './group-options.css';

interface GroupOptionsProps {
  readonly options: GroupOptions;
  /** Called with what is chosen anew; what else the options say stays. */
  readonly onChange: (change: GroupOptions) => void;
}

/** How the words of a group are judged where teachers differ. */
export function GroupOptionsView({ options, onChange: set }: GroupOptionsProps) {
  const {
    schwa = 'flex',
    shortOMerged = true,
    wh = 'counted',
    blends = 'counted',
    syllableTypes = 'free',
    irregularForms = 'counted',
  } = options;
  return (
    <details class="options">
      <summary>How words are judged</summary>
      <div class="choices">
        <label for="weak">Weak vowels, like the a of about</label>
        <select
          id="weak"
          value={schwa}
          onChange={(event) => set({ schwa: event.currentTarget.value as SchwaPolicy })}
        >
          {WEAK_VOWELS.map(([policy, says]) => (
            <option key={policy} value={policy}>
              {says}
            </option>
          ))}
        </select>
        <p class="quiet">
          In a longer word a vowel is often said weakly. A reader who knows a spelling in its full sound
          usually gets there, so that is the usual choice.
        </p>
        <label class="tick">
          <input
            type="checkbox"
            checked={blends === 'counted'}
            onChange={() => set({ blends: blends === 'counted' ? 'free' : 'counted' })}
          />{' '}
          blends must be taught (st, mp)
        </label>
        <label class="tick">
          <input
            type="checkbox"
            checked={syllableTypes === 'counted'}
            onChange={() => set({ syllableTypes: syllableTypes === 'counted' ? 'free' : 'counted' })}
          />{' '}
          syllable types of longer words must be taught
        </label>
        <label class="tick">
          <input
            type="checkbox"
            checked={wh === 'counted'}
            onChange={() => set({ wh: wh === 'counted' ? 'free' : 'counted' })}
          />{' '}
          wh must be taught (whale), even where it sounds like w
        </label>
        <label class="tick">
          <input
            type="checkbox"
            checked={irregularForms === 'counted'}
            onChange={() => set({ irregularForms: irregularForms === 'counted' ? 'free' : 'counted' })}
          />{' '}
          irregular forms of by-sight words must be taught (went, with go by sight)
        </label>
        <label class="tick">
          <input
            type="checkbox"
            checked={shortOMerged}
            onChange={() => set({ shortOMerged: !shortOMerged })}
          />{' '}
          the o of dog counts as short o
        </label>
        <label for="syllables">Longest base word</label>
        <select
          id="syllables"
          value={String(options.maxSyllables ?? '')}
          onChange={({ currentTarget }) =>
            set({ maxSyllables: currentTarget.value === '' ? undefined : Number(currentTarget.value) })
          }
        >
          {LONGEST_WORDS.map(([count, says]) => (
            <option key={count} value={count}>
              {says}
            </option>
          ))}
        </select>
      </div>
    </details>
  );
}
