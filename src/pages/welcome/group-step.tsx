import type { Accent, Sequence } from '../../analyze/types.ts';
import { AccentChoice } from '../../ui/accent-choice.tsx';
import { stepTitle } from '../../ui/step-title.ts';
import { say } from '../../wording/say.ts';

interface GroupStepProps {
  readonly sequence: Sequence;
  /** From 0: before the first. */
  readonly step: number;
  readonly name: string;
  readonly accent: Accent;
  readonly onName: (name: string) => void;
  readonly onStep: (step: number) => void;
  readonly onAccent: (accent: Accent) => void;
}

/** The second step: what the group is called, and how far it was taught. */
export function GroupStep({ sequence, step, name, accent, onName, onStep, onAccent }: GroupStepProps) {
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
        <label class="picker">
          {say('welcome.taughtThrough')}
          <select
            class="field"
            value={String(step)}
            onChange={({ currentTarget }) => onStep(Number(currentTarget.value))}
          >
            {Array.from({ length: sequence.steps.length + 1 }, (_, i) => (
              <option key={i} value={String(i)}>
                {i > 0 && `${i}. `}
                {stepTitle(sequence, i)}
              </option>
            ))}
          </select>
        </label>
        <AccentChoice accent={accent} onChange={onAccent} />
      </div>
    </section>
  );
}
