import type { Group, Sequence, SequenceStep } from '../../analyze/types.ts';
import { findSequence, type Sequences } from '../../host/store/sequences-store.ts';
import { patternNames } from '../../ui/pattern-names.ts';
import { stepTitle } from '../../ui/step-title.ts';
import { say, sayWith } from '../../wording/say.ts';
import { languageOf } from './language-of.ts';
import { addressOf } from './use-route.ts';

interface SequenceChoiceProps {
  readonly group: Group;
  readonly sequences: Sequences;
  readonly onMove: (to: { readonly step: number; readonly sequence?: string | null }) => void;
}

/**
 * Lets the teacher choose the sequence of a group and the last step it was taught. That step counts as the one being
 * taught now.
 */
export function SequenceChoice({ group, sequences, onMove }: SequenceChoiceProps) {
  const sequence = findSequence(sequences, group.sequence);
  const own = Object.values(sequences.own);
  const school = sequences.starters.filter(({ id }) => sequences.school.includes(id));
  const starters = sequences.starters.filter(({ id }) => !sequences.school.includes(id));
  const step = Math.min(group.step, sequence?.steps.length ?? 0);
  const option = ({ id, name }: Sequence) => (
    <option key={id} value={id} lang={languageOf(id, sequences)}>
      {name}
    </option>
  );
  const gone = group.sequence !== null && sequence === null;
  return (
    <>
      <div class="picker">
        <label for="sequence">{say('groups.sequence')}</label>
        <select
          id="sequence"
          class="field"
          value={group.sequence ?? ''}
          onChange={({ currentTarget }) => {
            const chosen = currentTarget.value === '' ? null : currentTarget.value;
            onMove({ sequence: chosen, step: within(findSequence(sequences, chosen), group.step) });
          }}
        >
          <option value="">{say('groups.none')}</option>
          {gone && (
            <option value={group.sequence}>{say('groups.sequenceGone', { sequence: group.sequence })}</option>
          )}
          {own.length > 0 && <optgroup label={say('groups.yourOwn')}>{own.map(option)}</optgroup>}
          {school.length > 0 && <optgroup label={say('groups.ofSchool')}>{school.map(option)}</optgroup>}
          <optgroup label={say('groups.starters')}>{starters.map(option)}</optgroup>
        </select>
        {gone && <p class="quiet">{say('groups.chooseAnother')}</p>}
        {sequence && (
          <p class="row">
            <a class="plain" href={addressOf({ view: 'sequence', id: sequence.id })}>
              {Object.hasOwn(sequences.own, sequence.id)
                ? say('groups.changeSteps')
                : say('groups.adaptSteps')}
            </a>
            <a class="plain" href={addressOf({ view: 'paste' })}>
              {say('groups.pasteYourOwn')}
            </a>
          </p>
        )}
      </div>
      {sequence && (
        <div class="picker">
          <label for="through">{say('groups.taughtThrough')}</label>
          <select
            id="through"
            class="field"
            value={String(step)}
            onChange={({ currentTarget }) => onMove({ step: Number(currentTarget.value) })}
          >
            <option value="0">{say('groups.beforeFirst')}</option>
            {sequence.steps.map((_, i) => (
              <option key={i} value={String(i + 1)} lang={languageOf(sequence.id, sequences)}>
                {i + 1}. {stepTitle(sequence, i + 1)}
              </option>
            ))}
          </select>
          <TaughtNow step={sequence.steps[step - 1]} />
        </div>
      )}
    </>
  );
}

function TaughtNow({ step }: { step: SequenceStep | undefined }) {
  if (!step) return null;
  const { teaches, bySight } = step;
  const patterns = teaches.length > 0 ? patternNames(teaches) : say('groups.noNewPattern');
  const says =
    bySight.length > 0
      ? sayWith('groups.taughtNowAndBySight', {
          patterns,
          words: <span lang="en">{bySight.join(', ')}</span>,
        })
      : sayWith('groups.taughtNow', { patterns });
  return <p class="quiet">{says}</p>;
}

function within(sequence: Sequence | null, step: number): number {
  return Math.min(step, sequence?.steps.length ?? 0);
}
