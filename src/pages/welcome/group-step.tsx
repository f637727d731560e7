import { useMemo } from 'preact/hooks';
import type { Accent, Sequence } from '../../analyze/types.ts';
import { AccentChoice } from '../../ui/accent-choice.tsx';
import { patternNames } from '../../ui/pattern-names.ts';
import { stepTitle } from '../../ui/step-title.ts';
import { LoadFault, useLoaded } from '../../ui/use-loaded.ts';
import { say } from '../../wording/say.ts';
import type { WordRow } from './word-rows.ts';

/** Loaded separately, because the word table is large and the rest of the page is ready before it. */
const loadRows = () => import('./load-word-rows.ts').then(({ loadWordRows }) => loadWordRows());

interface GroupStepProps {
  readonly sequence: Sequence;
  /** The number of steps taught; 0 is before the first step. Null while no step is chosen. */
  readonly step: number | null;
  readonly name: string;
  readonly accent: Accent;
  readonly onName: (name: string) => void;
  readonly onStep: (step: number) => void;
  readonly onAccent: (accent: Accent) => void;
}

/**
 * The second step: the name of the group, and how far the group was taught. The teacher gives the latter by choosing
 * words that the group can read, or a step.
 */
export function GroupStep({ sequence, step, name, accent, onName, onStep, onAccent }: GroupStepProps) {
  const makeRows = useLoaded(loadRows);
  const rows = useMemo(
    () => (makeRows instanceof LoadFault ? [] : (makeRows?.(sequence) ?? null)),
    [makeRows, sequence],
  );
  const taught = (step && sequence.steps[step - 1]?.teaches) || [];
  return (
    <section class="welcome-step" aria-labelledby="welcome-group">
      <h2 id="welcome-group">{say('welcome.stepGroup')}</h2>
      <div class="welcome-fields">
        <label class="picker">
          {say('welcome.groupName')}
          <input
            id="welcome-name"
            class="field"
            value={name}
            autocomplete="off"
            placeholder={say('welcome.groupNameShown')}
            onInput={({ currentTarget }) => onName(currentTarget.value)}
          />
        </label>
      </div>
      {rows === null ? (
        <p class="quiet" role="status">
          {say('welcome.makingRows')}
        </p>
      ) : (
        rows.length > 0 && <WordRows rows={rows} step={step} onStep={onStep} />
      )}
      <div class="welcome-fields">
        <div>
          <label class="picker">
            {say(rows?.length === 0 ? 'welcome.taughtThrough' : 'welcome.orStep')}
            <select
              id="welcome-step"
              class="field"
              value={step === null ? '' : String(step)}
              onChange={({ currentTarget }) => onStep(Number(currentTarget.value))}
            >
              {step === null && <option value="">{say('welcome.chooseStep')}</option>}
              {Array.from({ length: sequence.steps.length + 1 }, (_, i) => (
                <option key={i} value={String(i)}>
                  {i > 0 && `${i}. `}
                  {stepTitle(sequence, i)}
                </option>
              ))}
            </select>
          </label>
          {taught.length > 0 && (
            <p class="quiet">{say('welcome.taughtNow', { what: patternNames(taught) })}</p>
          )}
        </div>
        <AccentChoice accent={accent} onChange={onAccent} />
      </div>
    </section>
  );
}

interface WordRowsProps extends Pick<GroupStepProps, 'step' | 'onStep'> {
  readonly rows: readonly WordRow[];
}

/** Shows rows of words, each harder than the row before. The last row that the group can read determines its step. */
function WordRows({ rows, step, onStep }: WordRowsProps) {
  const choices = [{ step: 0, words: [] }, ...rows];
  return (
    <fieldset class="word-rows" aria-describedby="word-rows-hint">
      <legend>{say('welcome.whichWords')}</legend>
      <p class="quiet" id="word-rows-hint">
        {say('welcome.whichHint')}
      </p>
      {choices.map((row) => (
        <label key={row.step} class="word-row">
          <input type="radio" name="word-row" checked={step === row.step} onChange={() => onStep(row.step)} />
          {row.step === 0 ? (
            <span>{say('welcome.noneYet')}</span>
          ) : (
            <span class="word-row-words" lang="en">
              {row.words.join('  ')}
            </span>
          )}
          <span class="quiet">
            {row.step === 0 ? say('ui.beforeFirst') : say('ui.step', { step: row.step })}
          </span>
        </label>
      ))}
    </fieldset>
  );
}
