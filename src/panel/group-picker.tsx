import { useState } from 'preact/hooks';
import { catalogue } from '../analyze/index.ts';
import { changeChosen, changeGroups, chosenGroup, type Groups } from '../host/groups-store.ts';
import { findSequence } from '../host/sequences.ts';

const labels = new Map(catalogue.map(({ id, label }) => [id, label]));

/** Chooses the group, and the step it has reached in its sequence. */
export function GroupPicker({ groups }: { groups: Groups }) {
  const group = chosenGroup(groups);
  const sequence = findSequence(group.sequence);
  return (
    <section class="group" aria-label="Group">
      <label class="group-name">
        <span class="unseen">Group</span>
        <select
          value={groups.chosen}
          onChange={(event) => {
            const chosen = event.currentTarget.value;
            void changeGroups((all) => ({ ...all, chosen }));
          }}
        >
          {Object.entries(groups.groups).map(([id, { name }]) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </label>
      {sequence && (
        <StepSlider key={groups.chosen} step={group.step} steps={sequence.steps} sequence={sequence.name} />
      )}
    </section>
  );
}

interface StepSliderProps {
  readonly step: number;
  readonly steps: readonly {
    readonly title?: string;
    readonly teaches: readonly string[];
    readonly bySight: readonly string[];
  }[];
  readonly sequence: string;
}

/** Moves freely while dragged; the group changes when it is let go. */
function StepSlider({ step, steps, sequence }: StepSliderProps) {
  const [shown, setShown] = useState<number | null>(null);
  const at = Math.min(shown ?? step, steps.length);
  const current = steps[at - 1];
  const title =
    current?.title ??
    current?.teaches.map((id) => labels.get(id) ?? id).join(', ') ??
    'Before the first step';
  return (
    <div class="step">
      <label for="step">
        <span class="step-count">
          Step {at} of {steps.length}
        </span>{' '}
        <span class="quiet">in {sequence}</span>
      </label>
      <input
        id="step"
        type="range"
        min={0}
        max={steps.length}
        value={at}
        aria-valuetext={`Step ${at}: ${title}`}
        onInput={(event) => setShown(event.currentTarget.valueAsNumber)}
        onChange={(event) => {
          const chosen = event.currentTarget.valueAsNumber;
          void changeChosen((group) => ({ ...group, step: chosen })).then(() => setShown(null));
        }}
      />
      <p class="step-title">
        {title}
        {current && current.bySight.length > 0 && (
          <span class="quiet"> · by sight: {current.bySight.join(', ')}</span>
        )}
      </p>
    </div>
  );
}
