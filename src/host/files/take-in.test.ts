import { expect, test, vi } from 'vitest';
import { parseGroup, parseSequence } from '../../analyze/index.ts';
import type { Sequence } from '../../analyze/types.ts';
import type { Groups } from '../store/groups-store.ts';
import { starterSequences } from '../store/sequences.ts';
import type { Sequences } from '../store/sequences-store.ts';
import { takeIn } from './take-in.ts';

vi.mock('../browser.ts', () => ({ browser: {} }));

const sequenceOf = (id: string, pattern: string): Sequence =>
  parseSequence({ id, name: `Order ${id}`, source: 's', licence: 'l', steps: [{ teaches: [pattern] }] });
const herons = parseGroup({ name: 'Herons', sequence: 'ours', step: 1 });
const groups: Groups = { chosen: 'a', groups: { a: herons, 'group-1': herons }, unread: {} };
const starters = starterSequences();
const sequences: Sequences = {
  starters,
  school: [],
  preset: null,
  own: { ours: sequenceOf('ours', 'm') },
  unread: {},
};
const here = { groups, sequences };

test('a group whose name is already in use is added beside the existing group, with a new name and id', () => {
  const { groups: added } = takeIn({ groups: [herons, herons], sequences: [] }, here);
  expect(Object.entries(added).map(([id, { name }]) => `${id} ${name}`)).toEqual([
    'group-2 Herons 2',
    'group-3 Herons 3',
  ]);
});

test('a sequence that already exists is not added again, whatever the order of its keys', () => {
  const { steps, licence, source, name, id } = sequences.own.ours!;
  const same = { steps, licence, source, name, id };
  expect(takeIn({ groups: [], sequences: [same, starters[0]!] }, here).sequences).toEqual({});
});

test('a different sequence with an id already in use gets a new id, and its groups refer to the new id', () => {
  const moved = { ...herons, history: [{ date: '2026-11-25', sequence: 'ours', step: 1 }] };
  const added = takeIn({ groups: [moved], sequences: [sequenceOf('ours', 's')] }, here);
  const [[id, sequence]] = Object.entries(added.sequences) as [[string, Sequence]];
  expect(id).not.toBe('ours');
  expect(sequence).toMatchObject({ id, steps: [{ teaches: ['s'] }] });
  const [group] = Object.values(added.groups);
  expect(group).toMatchObject({ sequence: id, history: [{ sequence: id }] });
});

test('a starter is never replaced by a file', () => {
  const pretended = { ...sequenceOf('steady-steps', 'm') };
  const added = takeIn({ groups: [], sequences: [pretended] }, here);
  expect(Object.keys(added.sequences)).toEqual(['order-steady-steps']);
});

test('ids in a file that have a meaning to programs, such as __proto__, are made harmless', () => {
  const added = takeIn(
    { groups: [], sequences: [sequenceOf('__proto__', 'm'), sequenceOf('../x', 's')] },
    here,
  );
  expect(Object.keys(added.sequences)).toEqual(['proto', 'x']);
  expect(added.sequences.proto?.id).toBe('proto');
});
