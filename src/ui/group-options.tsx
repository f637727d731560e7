import type { GroupOptions, SchwaPolicy } from '../analyze/types.ts';
import { longestWords, weakVowels } from './describe-options.ts';
import './group-options.css';
import { say } from '../wording/say.ts';

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
    divisions = 'free',
    endings = 'parts',
    irregularForms = 'counted',
  } = options;
  return (
    <details class="options">
      <summary>{say('ui.howJudged')}</summary>
      <div class="choices">
        <label for="weak">{say('ui.weakVowels')}</label>
        <select
          id="weak"
          value={schwa}
          onChange={(event) => set({ schwa: event.currentTarget.value as SchwaPolicy })}
        >
          {weakVowels().map(([policy, says]) => (
            <option key={policy} value={policy}>
              {says}
            </option>
          ))}
        </select>
        <p class="quiet">{say('ui.weakVowelsHint')}</p>
        <label class="tick">
          <input
            type="checkbox"
            checked={blends === 'counted'}
            onChange={() => set({ blends: blends === 'counted' ? 'free' : 'counted' })}
          />{' '}
          {say('ui.blendsTick')}
        </label>
        <label class="tick">
          <input
            type="checkbox"
            checked={syllableTypes === 'counted'}
            onChange={() => set({ syllableTypes: syllableTypes === 'counted' ? 'free' : 'counted' })}
          />{' '}
          {say('ui.syllableTypesTick')}
        </label>
        <label class="tick">
          <input
            type="checkbox"
            checked={divisions === 'counted'}
            onChange={() => set({ divisions: divisions === 'counted' ? 'free' : 'counted' })}
          />{' '}
          {say('ui.divisionsTick')}
        </label>
        <label class="tick">
          <input
            type="checkbox"
            checked={endings === 'units'}
            onChange={() => set({ endings: endings === 'units' ? 'parts' : 'units' })}
          />{' '}
          {say('ui.endingsTick')}
        </label>
        <label class="tick">
          <input
            type="checkbox"
            checked={wh === 'counted'}
            onChange={() => set({ wh: wh === 'counted' ? 'free' : 'counted' })}
          />{' '}
          {say('ui.whTick')}
        </label>
        <label class="tick">
          <input
            type="checkbox"
            checked={irregularForms === 'counted'}
            onChange={() => set({ irregularForms: irregularForms === 'counted' ? 'free' : 'counted' })}
          />{' '}
          {say('ui.irregularFormsTick')}
        </label>
        <label class="tick">
          <input
            type="checkbox"
            checked={shortOMerged}
            onChange={() => set({ shortOMerged: !shortOMerged })}
          />{' '}
          {say('ui.shortOTick')}
        </label>
        <label for="syllables">{say('ui.longestBase')}</label>
        <select
          id="syllables"
          value={String(options.maxSyllables ?? '')}
          onChange={({ currentTarget }) =>
            set({ maxSyllables: currentTarget.value === '' ? undefined : Number(currentTarget.value) })
          }
        >
          {longestWords().map(([count, says]) => (
            <option key={count} value={count}>
              {says}
            </option>
          ))}
        </select>
      </div>
    </details>
  );
}
