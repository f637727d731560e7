import { useState } from 'preact/hooks';
import type { SequenceStep } from '../analyze/types.ts';
import { changeChosen, changeGroups, chosenGroup, type Groups } from '../host/groups-store.ts';
import { moveGroup, today } from '../host/move-group.ts';
import { findSequence, type Sequences } from '../host/sequences-store.ts';
import { patternLabel } from '../marks/pattern-label.ts';
import { GroupOptionsView } from '../ui/group-options.tsx';

/** Chooses the group, and the step it has reached in its sequence. */
export function GroupPicker({ groups, sequences }: { groups: Groups; sequences: Sequences }) {
  const group = chosenGroup(groups);
  const sequence = findSequence(sequences, group.sequence);
  const unread = Object.keys(groups.unread);
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
      {unread.length > 0 && (
        <p class="quiet">
          Kept, but not readable by this version of Wordreach: {unread.join(', ')}. Update the extension to
          use {unread.length === 1 ? 'it' : 'them'}.
        </p>
      )}
      {sequence && (
        <StepSlider key={groups.chosen} step={group.step} steps={sequence.steps} sequence={sequence.name} />
      )}
      <GroupOptionsView
        options={group.options}
        onChange={(change) =>
          void changeChosen((group) => ({ ...group, options: { ...group.options, ...change } }))
        }
      />
      <a class="plain" href={`/groups.html#group/${groups.chosen}`} target="_blank" rel="noopener">
        Edit groups
      </a>
    </section>
  );
}

interface StepSliderProps {
  readonly step: number;
  readonly steps: readonly SequenceStep[];
  readonly sequence: string;
}

/** Moves freely while dragged; the group changes when it is let go. */
function StepSlider({ step, steps, sequence }: StepSliderProps) {
  const [shown, setShown] = useState<number | null>(null);
  const at = Math.min(shown ?? step, steps.length);
  const current = steps[at - 1];
  const title = current ? (current.title ?? listPatterns(current)) : 'Before the first step';
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
          void changeChosen((group) => moveGroup(group, { step: chosen }, today())).then(() =>
            setShown(null),
          );
        }}
      />
      <p class="step-title">{title}</p>
      {current && (
        <details class="quiet">
          <summary>What this step teaches</summary>
          <p>
            {listPatterns(current)}
            {current.bySight.length > 0 && `; by sight: ${current.bySight.join(', ')}`}
          </p>
        </details>
      )}
    </div>
  );
}

function listPatterns({ teaches }: SequenceStep): string {
  return teaches.map(patternLabel).join('; ');
}
