import type { Group, Sequence, SequenceStep } from '../analyze/types.ts';
import { findSequence, type Sequences } from '../host/sequences-store.ts';
import { patternLabel } from '../marks/pattern-label.ts';
import { addressOf } from './use-route.ts';

interface SequenceChoiceProps {
  readonly group: Group;
  readonly sequences: Sequences;
  readonly onMove: (to: { readonly step: number; readonly sequence?: string | null }) => void;
}

/** Which sequence a group follows, and how far it has been taught; the last step taught is the one taught now. */
export function SequenceChoice({ group, sequences, onMove }: SequenceChoiceProps) {
  const sequence = findSequence(sequences, group.sequence);
  const own = Object.values(sequences.own);
  const school = sequences.starters.filter(({ id }) => sequences.school.includes(id));
  const starters = sequences.starters.filter(({ id }) => !sequences.school.includes(id));
  const step = Math.min(group.step, sequence?.steps.length ?? 0);
  const gone = group.sequence !== null && sequence === null;
  return (
    <>
      <div class="picker">
        <label for="sequence">Sequence</label>
        <select
          id="sequence"
          class="field"
          value={group.sequence ?? ''}
          onChange={({ currentTarget }) => {
            const chosen = currentTarget.value === '' ? null : currentTarget.value;
            onMove({ sequence: chosen, step: within(findSequence(sequences, chosen), group.step) });
          }}
        >
          <option value="">None: only what is added below</option>
          {gone && <option value={group.sequence}>{group.sequence}: not in this browser</option>}
          {own.length > 0 && <optgroup label="Your own">{own.map(option)}</optgroup>}
          {school.length > 0 && <optgroup label="From your school">{school.map(option)}</optgroup>}
          <optgroup label="Starters">{starters.map(option)}</optgroup>
        </select>
        {gone && (
          <p class="quiet">
            This group’s sequence is not in this browser, so none of its steps count. Choose another one.
          </p>
        )}
        {sequence && (
          <p class="row">
            <a class="plain" href={addressOf({ view: 'sequence', id: sequence.id })}>
              {sequence.id in sequences.own ? 'Change its steps' : 'Adapt its steps'}
            </a>
            <a class="plain" href={addressOf({ view: 'paste' })}>
              Paste your own
            </a>
          </p>
        )}
      </div>
      {sequence && (
        <div class="picker">
          <label for="through">Taught through</label>
          <select
            id="through"
            class="field"
            value={String(step)}
            onChange={({ currentTarget }) => onMove({ step: Number(currentTarget.value) })}
          >
            <option value="0">Before the first step</option>
            {sequence.steps.map((each, i) => (
              <option key={i} value={String(i + 1)}>
                {i + 1}. {titleOf(each)}
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
  return (
    <p class="quiet">
      Taught now: {step.teaches.map(patternLabel).join('; ') || 'no new pattern'}
      {step.bySight.length > 0 && `; by sight: ${step.bySight.join(', ')}`}
    </p>
  );
}

/** What a step is called: its title, or else its patterns or words. */
export function titleOf({ title, teaches, bySight }: SequenceStep): string {
  return title ?? (teaches.map(patternLabel).join('; ') || bySight.join(', ') || 'empty');
}

function option({ id, name }: Sequence) {
  return (
    <option key={id} value={id}>
      {name}
    </option>
  );
}

function within(sequence: Sequence | null, step: number): number {
  return Math.min(step, sequence?.steps.length ?? 0);
}
