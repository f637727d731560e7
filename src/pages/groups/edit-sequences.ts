import type { Group, Sequence } from '../../analyze/types.ts';
import { changeGroups, findGroup } from '../../host/store/groups-store.ts';
import {
  changeSequences,
  findSequence,
  freeSequenceId,
  loadSequences,
} from '../../host/store/sequences-store.ts';
import { noteEdit } from '../../ui/edit-log.ts';
import { say } from '../../wording/say.ts';
import type { EditedSteps } from './edit-steps.ts';
import { go } from './use-route.ts';

/** Takes a sequence and returns the changed sequence. `place` maps the old step of a group to its new step. */
export type SequenceChange = (sequence: Sequence) => {
  readonly sequence: Sequence;
  readonly place?: (step: number) => number;
};

/** Makes a sequence change from a change to its steps alone. */
export function stepChange(edit: (steps: Sequence['steps']) => EditedSteps): SequenceChange {
  return (sequence) => {
    const { steps, place } = edit(sequence.steps);
    return { sequence: { ...sequence, steps }, place };
  };
}

/**
 * Changes a sequence. The change can be undone, and changes run one after another. A starter is never changed: a copy
 * of the starter is changed and shown instead, and the groups that follow the starter follow the copy from then on.
 * Groups keep their place.
 */
export function editSequence(id: string, says: string, change: SequenceChange): Promise<void> {
  const done = last.then(() => editNow(id, says, change));
  last = done.catch(() => undefined);
  return done;
}
let last: Promise<void> = Promise.resolve();
/** Maps the id of each copy made while this page is open to the id of its starter. */
const starterOf = new Map<string, string>();

/**
 * Returns the id of the starter that a sequence was copied from while this page is open, or else the sequence’s own id.
 * A starter and its copy share one view.
 */
export function originOf(id: string): string {
  return starterOf.get(id) ?? id;
}

async function editNow(id: string, says: string, change: SequenceChange): Promise<void> {
  const sequences = await loadSequences();
  const found = findSequence(sequences, id);
  if (!found) return;
  const own = Object.hasOwn(sequences.own, id);
  const before = own ? found : copyOf(found, freeSequenceId(ownName(found), sequences));
  const { sequence, place = (step: number) => step } = change(before);
  await changeSequences((all) => ({ ...all, [before.id]: { ...sequence, id: before.id } }));
  const moved = await moveFollowers(found.id, before.id, place);
  if (!own) {
    starterOf.set(before.id, id);
    go({ view: 'sequence', id: before.id });
  }
  noteEdit(own ? says : say('groups.inACopy', { what: says, name: before.name }), async () => {
    await changeGroups((all) => ({ ...all, groups: { ...all.groups, ...restore(all.groups, moved) } }));
    await changeSequences(({ [before.id]: _, ...others }) =>
      own ? { ...others, [before.id]: found } : others,
    );
    if (!own) go({ view: 'sequence', id: found.id });
  });
}

/** Adds a sequence and returns its id. The addition can be undone. */
export async function addSequence(says: string, sequence: Omit<Sequence, 'id'>): Promise<string> {
  const id = freeSequenceId(sequence.name, await loadSequences());
  await changeSequences((own) => ({ ...own, [id]: { ...sequence, id } }));
  noteEdit(says, () => changeSequences(({ [id]: _, ...others }) => others));
  return id;
}

/** Deletes one of the teacher’s own sequences. The deletion can be undone. */
export async function deleteSequence(sequence: Sequence): Promise<void> {
  const { id, name } = sequence;
  await changeSequences(({ [id]: _, ...others }) => others);
  noteEdit(say('groups.deleted', { what: name }), () =>
    changeSequences((own) => ({ ...own, [id]: sequence })),
  );
}

/** Returns a copy of a sequence as the teacher’s own. The copy says where it comes from. */
export function copyOf(sequence: Sequence, id: string): Sequence {
  const { note: _, ...rest } = sequence;
  const name = ownName(sequence);
  // If the sequence is itself a copy, its source already says where it comes from.
  const source = name === rest.name ? rest.source : say('sequences.adaptedFrom', rest);
  return { ...rest, id, name, source };
}

function ownName({ name }: Sequence): string {
  const ending = say('sequences.nameOfCopy', { name: '' });
  return name.endsWith(ending) ? name : say('sequences.nameOfCopy', { name });
}

/**
 * Moves the groups that follow one sequence to another sequence, each at its new place. Returns the groups as they were
 * before.
 */
async function moveFollowers(
  from: string,
  to: string,
  place: (step: number) => number,
): Promise<Readonly<Record<string, Group>>> {
  let before: Record<string, Group> = {};
  await changeGroups((all) => {
    const followers = Object.entries(all.groups).filter(([, { sequence }]) => sequence === from);
    before = Object.fromEntries(followers);
    const moved = followers.map(([id, group]) => {
      const history = group.history?.map((move) =>
        move.sequence === from ? { ...move, sequence: to, step: place(move.step) } : move,
      );
      return [id, { ...group, sequence: to, step: place(group.step), ...(history && { history }) }];
    });
    return { ...all, groups: { ...all.groups, ...Object.fromEntries(moved) } };
  });
  return before;
}

/** Returns the groups that still exist, back at their earlier place. Other changes to these groups are kept. */
function restore(
  now: Readonly<Record<string, Group>>,
  before: Readonly<Record<string, Group>>,
): Readonly<Record<string, Group>> {
  return Object.fromEntries(
    Object.entries(before).flatMap(([id, { sequence, step, history }]) => {
      const group = findGroup({ groups: now }, id);
      return group ? [[id, { ...group, sequence, step, ...(history && { history }) }]] : [];
    }),
  );
}
