import type { Group, Sequence } from '../../analyze/types.ts';
import { freeGroupId, freeGroupName, type Groups } from '../store/groups-store.ts';
import { findSequence, freeSequenceId, type Sequences } from '../store/sequences-store.ts';
import type { Shared } from './share-file.ts';

/**
 * The items that a file adds to the items in this browser, under ids and names of their own. Nothing that already
 * exists is changed.
 */
export interface TakenIn {
  readonly groups: Readonly<Record<string, Group>>;
  readonly sequences: Readonly<Record<string, Sequence>>;
}

/**
 * Works out what to add for the content of a file. A sequence that already exists with equal content is not added
 * again. A different sequence whose id is already in use gets a new id, and its groups refer to the new id.
 */
export function takeIn(
  { groups, sequences }: Shared,
  here: { groups: Groups; sequences: Sequences },
): TakenIn {
  let known = here.sequences;
  const ids = new Map<string, string>();
  const added: [string, Sequence][] = [];
  for (const sequence of sequences) {
    const same = findSequence(known, sequence.id);
    const isHere = same !== null && isEqual(same, sequence);
    const id = isHere ? sequence.id : freeSequenceId(same ? sequence.name : sequence.id, known);
    ids.set(sequence.id, id);
    if (isHere) continue;
    added.push([id, { ...sequence, id }]);
    known = { ...known, own: Object.fromEntries([...Object.entries(known.own), [id, { ...sequence, id }]]) };
  }
  const follow = (id: string | null): string | null => (id === null ? null : (ids.get(id) ?? id));
  let all = here.groups;
  const addedGroups: [string, Group][] = [];
  for (const group of groups) {
    const id = freeGroupId(all);
    const taken: Group = {
      ...group,
      name: freeGroupName(group.name, all),
      sequence: follow(group.sequence),
      ...(group.history && {
        history: group.history.map((move) => ({ ...move, sequence: follow(move.sequence) })),
      }),
    };
    addedGroups.push([id, taken]);
    all = { ...all, groups: { ...all.groups, [id]: taken } };
  }
  return { groups: Object.fromEntries(addedGroups), sequences: Object.fromEntries(added) };
}

function isEqual(a: Sequence, b: Sequence): boolean {
  return inOrder(a) === inOrder(b);
}

/** The keys are written in a fixed order, since storage loses their order. */
function inOrder({ id, name, source, licence, note, accent, steps }: Sequence): string {
  const told = steps.map(({ title, teaches, bySight }) => [title, teaches, bySight]);
  return JSON.stringify([id, name, source, licence, note, accent, told]);
}
