import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Sequence } from '../analyze/types.ts';
import type { Groups } from '../host/groups-store.ts';
import type { Sequences } from '../host/sequences-store.ts';
import {
  addSequence,
  copyOf,
  deleteSequence,
  editSequence,
  type SequenceChange,
  stepChange,
} from './edit-sequences.ts';
import { type EditedSteps, insertStep } from './edit-steps.ts';
import { findOddities, neverTaught } from './find-oddities.ts';
import './sequence.css';
import { StepList } from './step-list.tsx';
import { TextField } from './text-field.tsx';
import type { EngineState } from './use-engine.ts';
import { go } from './use-route.ts';

interface SequenceViewProps {
  readonly sequence: Sequence;
  readonly groups: Groups;
  readonly sequences: Sequences;
  readonly engine: EngineState;
}

/** One sequence: its steps in order, each of which can be changed, and what looks odd in them. */
export function SequenceView({ sequence, groups, sequences, engine }: SequenceViewProps) {
  const { id, name, steps } = sequence;
  const own = id in sequences.own;
  const followers = Object.values(groups.groups).filter((group) => group.sequence === id);
  const oddities = useMemo(
    () => findOddities(sequence, engine.kind === 'ready' ? engine.engine : null),
    [sequence, engine],
  );
  const copying = useRef(false);
  useEffect(() => {
    copying.current = false;
  }, [id]);
  /** While a starter is being copied, a second press would make a second copy. */
  const change = async (says: string, by: SequenceChange): Promise<void> => {
    if (copying.current) return;
    copying.current = !own;
    await editSequence(id, says, by).catch((error: unknown) => {
      copying.current = false;
      throw error;
    });
  };
  const edit = (says: string, by: (all: Sequence['steps']) => EditedSteps): Promise<void> =>
    change(says, stepChange(by));
  return (
    <div class="sheet">
      <div class="part">
        <TextField
          label="Name of the sequence"
          large
          value={name}
          onChange={(changed) =>
            void change(`Renamed ${name}`, (before) => ({ sequence: { ...before, name: changed } }))
          }
        />
        {!own && (
          <p class="note">
            {sequences.school.includes(id)
              ? 'This sequence comes from your school.'
              : 'This starter comes with Wordreach.'}{' '}
            Change anything, and a copy of your own is made, which
            {followers.length > 0
              ? ` ${list(followers.map((group) => group.name))} will follow.`
              : ' your groups can follow.'}
          </p>
        )}
        {sequence.note && <p>{sequence.note}</p>}
        <p class="row">
          <span class="quiet">
            {steps.length} {steps.length === 1 ? 'step' : 'steps'}
            {followers.length > 0 && ` · followed by ${list(followers.map((group) => group.name))}`}
          </span>
          <button
            type="button"
            class="plain"
            onClick={async () => {
              const { id: _, ...copy } = copyOf(sequence, id);
              go({ view: 'sequence', id: await addSequence(`Copied ${name}`, copy) });
            }}
          >
            Copy
          </button>
          {own &&
            (followers.length === 0 ? (
              <button
                type="button"
                class="plain"
                onClick={() => {
                  go({ view: 'group', id: null });
                  void deleteSequence(sequence);
                }}
              >
                Delete
              </button>
            ) : (
              <span class="quiet">It can be deleted once no group follows it.</span>
            ))}
        </p>
        <details class="unfold">
          <summary>Where it comes from</summary>
          <p class="quiet">
            {sequence.source} Licence: {sequence.licence}.
          </p>
        </details>
      </div>
      <section class="part" aria-labelledby="order-title">
        <h2 id="order-title">Steps</h2>
        <p class="quiet">
          Open a step to change it. Move it with the arrows, by its handle, or with Alt and the arrow keys.
        </p>
        <Odd count={oddities.length} sequence={sequence} />
        <StepList steps={steps} oddities={oddities} onEdit={edit} />
        <button
          type="button"
          class="action"
          onClick={() =>
            void edit('Added a step', (all) =>
              insertStep(all, all.length, { title: 'New step', teaches: [], bySight: [] }),
            )
          }
        >
          Add a step at the end
        </button>
      </section>
    </div>
  );
}

/** How much looks odd, and what is never taught at all. */
function Odd({ count, sequence }: { count: number; sequence: Sequence }) {
  const [shown, setShown] = useState(false);
  const missing = neverTaught(sequence);
  const families = [...new Set(missing.map(({ family }) => family))];
  return (
    <>
      {count > 0 && (
        <p>
          {count === 1 ? 'One thing looks odd; it is' : `${count} things look odd; they are`} marked at the
          steps.
        </p>
      )}
      {missing.length > 0 && (
        <details class="unfold" open={shown} onToggle={(event) => setShown(event.currentTarget.open)}>
          <summary>
            {missing.length === 1 ? 'One pattern is' : `${missing.length} patterns are`} never taught
          </summary>
          {shown && (
            <dl class="taught">
              {families.map((family) => (
                <div key={family} class="taught-row">
                  <dt>{family}</dt>
                  <dd>
                    {missing
                      .filter((row) => row.family === family)
                      .map(({ label }) => label)
                      .join('; ')}
                  </dd>
                </div>
              ))}
            </dl>
          )}
        </details>
      )}
    </>
  );
}

/** `Herons`, `Herons and Plovers`, `Herons, Plovers and Terns`. */
function list(names: readonly string[]): string {
  return new Intl.ListFormat('en-GB').format(names);
}
