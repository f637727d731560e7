import type { Accent, GroupOptions, SchwaPolicy } from '../analyze/types.ts';
import { bathVowels, longestWords, weakVowels } from './describe-options.ts';
import './group-options.css';
import { say } from '../wording/say.ts';

interface GroupOptionsProps {
  readonly accent: Accent;
  readonly options: GroupOptions;
  /** Called with the changed options. The other options stay as they are. */
  readonly onChange: (change: GroupOptions) => void;
}

/** The options for judging a group's words where teachers differ. */
export function GroupOptionsView({ accent, options, onChange: set }: GroupOptionsProps) {
  const {
    schwa = 'flex',
    shortOMerged = true,
    wh = 'counted',
    blends = 'counted',
    syllableTypes = 'free',
    divisions = 'free',
    endings = 'parts',
    irregularForms = 'counted',
    bath = 'father',
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
        <Tick
          says={say('ui.blendsTick')}
          checked={blends === 'counted'}
          onChange={() => set({ blends: blends === 'counted' ? 'free' : 'counted' })}
        />
        <Tick
          says={say('ui.syllableTypesTick')}
          checked={syllableTypes === 'counted'}
          onChange={() => set({ syllableTypes: syllableTypes === 'counted' ? 'free' : 'counted' })}
        />
        <Tick
          says={say('ui.divisionsTick')}
          checked={divisions === 'counted'}
          onChange={() => set({ divisions: divisions === 'counted' ? 'free' : 'counted' })}
        />
        <Tick
          says={say('ui.endingsTick')}
          checked={endings === 'units'}
          onChange={() => set({ endings: endings === 'units' ? 'parts' : 'units' })}
        />
        <Tick
          says={say('ui.whTick')}
          checked={wh === 'counted'}
          onChange={() => set({ wh: wh === 'counted' ? 'free' : 'counted' })}
        />
        <Tick
          says={say('ui.irregularFormsTick')}
          checked={irregularForms === 'counted'}
          onChange={() => set({ irregularForms: irregularForms === 'counted' ? 'free' : 'counted' })}
        />
        <Tick
          says={say('ui.shortOTick')}
          checked={shortOMerged}
          onChange={() => set({ shortOMerged: !shortOMerged })}
        />
        {accent === 'british' && (
          <>
            <label for="bath">{say('ui.bath')}</label>
            <select
              id="bath"
              value={bath}
              onChange={({ currentTarget }) => set({ bath: currentTarget.value as 'father' | 'cat' })}
            >
              {bathVowels().map(([vowel, says]) => (
                <option key={vowel} value={vowel}>
                  {says}
                </option>
              ))}
            </select>
          </>
        )}
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
        <Tick
          says={say('ui.ipaTick')}
          checked={options.soundMarks === 'ipa'}
          onChange={() => set({ soundMarks: options.soundMarks === 'ipa' ? 'dictionary' : 'ipa' })}
        />
      </div>
    </details>
  );
}

interface TickProps {
  readonly says: string;
  readonly checked: boolean;
  readonly onChange: () => void;
}

function Tick({ says, checked, onChange }: TickProps) {
  return (
    <label class="tick">
      <input type="checkbox" checked={checked} onChange={onChange} /> {says}
    </label>
  );
}
