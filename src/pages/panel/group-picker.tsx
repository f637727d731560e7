import { useState } from 'preact/hooks';
import { accentOf } from '../../analyze/index.ts';
import type { Group, Sequence } from '../../analyze/types.ts';
import {
  changeGroupById,
  changeGroups,
  chosenGroup,
  type Groups,
  tryStep,
} from '../../host/store/groups-store.ts';
import { findSequence, type Sequences } from '../../host/store/sequences-store.ts';
import { noteEdit } from '../../ui/edit-log.ts';
import { patternNames } from '../../ui/pattern-names.ts';
import { stepTitle } from '../../ui/step-title.ts';
import { LoadFault, useLoaded } from '../../ui/use-loaded.ts';
import { say } from '../../wording/say.ts';

/** The options are loaded separately, since they are collapsed at first. */
const loadOptions = () =>
  import('../../ui/group-options.tsx').then(({ GroupOptionsView }) => GroupOptionsView);

/**
 * Shows the group and its step in one line. The line opens to choose the group, try other steps and set how words are
 * decoded.
 */
export function GroupPicker({ groups, sequences }: { groups: Groups; sequences: Sequences }) {
  const OptionsView = useLoaded(loadOptions);
  const group = chosenGroup(groups);
  const sequence = findSequence(sequences, group.sequence);
  const unread = Object.keys(groups.unread);
  const at = sequence ? Math.min(group.step, sequence.steps.length) : 0;
  return (
    <section class="group" aria-label={say('panel.group')}>
      <details>
        <summary>
          <b class="group-name">{group.name}</b>{' '}
          {sequence && (
            <span class="step-count">
              {say('panel.stepOf', { step: at, steps: sequence.steps.length })}
              <span class="step-title">: {stepTitle(sequence, at)}</span>
            </span>
          )}
        </summary>
        <div class="group-choices">
          <label>
            <span class="unseen">{say('panel.group')}</span>
            <select
              value={groups.chosen}
              onChange={(event) => {
                const chosen = event.currentTarget.value;
                void choose(groups, chosen);
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
            <StepSlider key={groups.chosen} step={groups.trial?.step ?? at} own={at} sequence={sequence} />
          )}
          {OptionsView !== null && !(OptionsView instanceof LoadFault) && (
            <OptionsView
              accent={accentOf(group)}
              options={group.options}
              onChange={(change) => void setOptions(groups.chosen, group, { ...group.options, ...change })}
            />
          )}
          <a
            class="plain"
            href={`/groups.html#group/${encodeURIComponent(groups.chosen)}`}
            target="_blank"
            rel="noopener"
          >
            {say('panel.editGroups')}
          </a>
        </div>
      </details>
      {unread.length > 0 && (
        <p class="quiet">{say('panel.unreadGroups', { groups: unread.join(', '), count: unread.length })}</p>
      )}
    </section>
  );
}

async function choose({ chosen: before }: Groups, chosen: string): Promise<void> {
  const use = (id: string): Promise<void> => changeGroups((all) => ({ ...all, chosen: id }));
  await use(chosen);
  noteEdit(say('panel.groupChanged'), () => use(before));
}

async function setOptions(
  id: string,
  { name, options: before }: Group,
  options: Group['options'],
): Promise<void> {
  const set = (to: Group['options']): Promise<void> =>
    changeGroupById(id, (now) => ({ ...now, options: to }));
  await set(options);
  noteEdit(say('groups.changedOptions', { group: name }), () => set(before));
}

interface StepSliderProps {
  /** The step that is shown. `own` is the group’s own step. */
  readonly step: number;
  readonly own: number;
  readonly sequence: Sequence;
}

/**
 * A slider that moves freely while it is dragged. The page is shown at the step where the slider is released. The group
 * keeps its step.
 */
function StepSlider({ step, own, sequence }: StepSliderProps) {
  const { steps } = sequence;
  const [dragged, setDragged] = useState<number | null>(null);
  const at = Math.min(dragged ?? step, steps.length);
  const current = steps[at - 1];
  const title = stepTitle(sequence, at);
  return (
    <div class="step">
      <label for="step">
        {say('panel.whatIf')} <span class="quiet">{say('ui.inSequence', { sequence: sequence.name })}</span>
      </label>
      <input
        id="step"
        type="range"
        min={0}
        max={steps.length}
        value={at}
        aria-valuetext={say('panel.stepValue', { step: at, title })}
        onInput={(event) => setDragged(event.currentTarget.valueAsNumber)}
        onChange={(event) => {
          const tried = event.currentTarget.valueAsNumber;
          void tryStep(tried === own ? null : tried).then(() => setDragged(null));
        }}
      />
      <p class="step-tried">{say('panel.stepValue', { step: at, title })}</p>
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
