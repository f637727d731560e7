import { useState } from 'preact/hooks';
import type { SequenceStep } from '../../analyze/types.ts';
import { changeChosen, changeGroups, chosenGroup, type Groups } from '../../host/store/groups-store.ts';
import { moveGroup, today } from '../../host/store/move-group.ts';
import { findSequence, type Sequences } from '../../host/store/sequences-store.ts';
import { GroupOptionsView } from '../../ui/group-options.tsx';
import { patternNames } from '../../ui/pattern-names.ts';
import { stepTitle } from '../../ui/step-title.ts';
import { say } from '../../wording/say.ts';

/** Chooses the group, and the step it has reached in its sequence. */
export function GroupPicker({ groups, sequences }: { groups: Groups; sequences: Sequences }) {
  const group = chosenGroup(groups);
  const sequence = findSequence(sequences, group.sequence);
  const unread = Object.keys(groups.unread);
  return (
    <section class="group" aria-label={say('panel.group')}>
      <label class="group-name">
        <span class="unseen">{say('panel.group')}</span>
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
        <p class="quiet">{say('panel.unreadGroups', { groups: unread.join(', '), count: unread.length })}</p>
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
      <a
        class="plain"
        href={`/groups.html#group/${encodeURIComponent(groups.chosen)}`}
        target="_blank"
        rel="noopener"
      >
        {say('panel.editGroups')}
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
  const title = stepTitle({ steps }, at);
  return (
    <div class="step">
      <label for="step">
        <span class="step-count">{say('panel.stepOf', { step: at, steps: steps.length })}</span>{' '}
        <span class="quiet">{say('ui.inSequence', { sequence })}</span>
      </label>
      <input
        id="step"
        type="range"
        min={0}
        max={steps.length}
        value={at}
        aria-valuetext={say('panel.stepValue', { step: at, title })}
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
          <summary>{say('panel.stepTeaches')}</summary>
          <p>
            {patternNames(current.teaches)}
            {current.bySight.length > 0 &&
              `; ${say('ui.bySightWords', { words: current.bySight.join(', ') })}`}
          </p>
        </details>
      )}
    </div>
  );
}
