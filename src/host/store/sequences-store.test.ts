import { beforeEach, expect, test, vi } from 'vitest';
import { kept } from '../../../tests/fakes/local-storage.ts';
import { loadSchoolPreset } from './school-preset.ts';
import {
  changeSequences,
  findSequence,
  freeSequenceId,
  listSequences,
  loadSequence,
  loadSequences,
} from './sequences-store.ts';

vi.mock('../browser.ts', () => import('../../../tests/fakes/local-storage.ts'));

beforeEach(() => kept.clear());

const harbour = {
  id: 'harbour-order',
  name: 'Harbour order',
  source: 'our own',
  licence: 'MIT',
  steps: [{ teaches: ['m'], bySight: ['the'] }],
};

test('the teacher’s own sequences are listed before the starters, and sequences are found by id', async () => {
  await changeSequences((own) => ({ ...own, 'harbour-order': harbour }));
  const sequences = await loadSequences();
  expect(listSequences(sequences).map(({ id }) => id)[0]).toBe('harbour-order');
  expect(findSequence(sequences, 'harbour-order')).toEqual(harbour);
  expect(findSequence(sequences, 'steady-steps')?.name).toBe('Steady steps');
  expect(findSequence(sequences, 'constructor')).toBeNull();
  expect(findSequence(sequences, null)).toBeNull();
  for (const id of ['harbour-order', 'steady-steps', 'constructor', null])
    expect(await loadSequence(id)).toEqual(findSequence(sequences, id));
});

test('an unreadable sequence stays in storage, and no other sequence gets its id', async () => {
  const later = { ...harbour, id: 'later', steps: [{ teaches: ['a pattern of next year'] }] };
  kept.set('sequences', { version: 1, sequences: { later } });
  await changeSequences((own) => ({ ...own, 'harbour-order': harbour }));
  expect((kept.get('sequences') as { sequences: Record<string, unknown> }).sequences.later).toEqual(later);
  expect(freeSequenceId('Later', await loadSequences())).toBe('later-2');
});

test.each([
  ['Harbour order', 'harbour-order'],
  ['Steady steps', 'steady-steps-2'],
  ['  École – 2027! ', 'ecole-2027'],
  ['音', 'sequence'],
  ['__proto__', 'proto'],
])('a sequence named “%s” gets the id %s', async (name, id) => {
  expect(freeSequenceId(name, await loadSequences())).toBe(id);
});

test.each([null, 7, { sequences: 7 }, { sequences: null }])(
  '%j in storage gives only the starter sequences',
  async (value) => {
    kept.set('sequences', value);
    const { own, starters } = await loadSequences();
    expect(own).toEqual({});
    expect(starters.length).toBeGreaterThan(1);
  },
);

test('school sequences come before the starters, and faulty entries in the policy are skipped', async () => {
  kept.set('managed', {
    sequence: 'harbour-order',
    sequences: [harbour, { ...harbour, id: 'steady-steps' }, { id: 'broken' }, 7],
  });
  const { starters, school } = await loadSequences();
  expect(school).toEqual(['harbour-order']);
  expect(starters[0]).toEqual(harbour);
  expect(starters.filter(({ id }) => id === 'steady-steps').map(({ name }) => name)).toEqual([
    'Steady steps',
  ]);
  expect(await loadSchoolPreset()).toMatchObject({ sequence: 'harbour-order' });
});

test.each([{ sequences: 'none' }, { sequence: 7 }, null])(
  'a policy of %j sets no school sequences',
  async (managed) => {
    kept.set('managed', managed);
    expect((await loadSequences()).school).toEqual([]);
  },
);
