import { expect, test } from 'vitest';
import type { LessonInput } from './lesson-input.ts';
import type { PartMaker } from './lesson-part.ts';
import { decide, makePart, parsePlan, planOf, renew, startPlan } from './lesson-plan.ts';

const maker: PartMaker = {
  id: 'boats',
  title: 'Boats',
  use: 'Pupils read the names of boats.',
  choices: () => [
    {
      id: 'count',
      label: 'How many',
      options: ['1', '2', '3'].map((value) => ({ value, label: value })),
      usual: '2',
    },
  ],
  make: (_input, chosen, picker) => ({
    says: null,
    blocks: [
      {
        id: 'boats',
        title: 'Boats',
        layout: 'words',
        columns: [{ head: '', shows: 'both' }],
        rows: picker
          .pick('skiff dinghy ferry punt yawl ketch'.split(' '), Number(chosen('count')))
          .map((word) => [word]),
      },
    ],
  }),
};
const input = {} as LessonInput;
const words = (plan = startPlan(5)) => makePart(maker, plan, input).blocks[0]!.rows.map(([word]) => word);

test('the same seed gives the same part, and another seed gives another part', () => {
  expect(words(startPlan(5))).toEqual(words(startPlan(5)));
  const many = [1, 2, 3, 4, 5, 6].map((seed) => words(startPlan(seed)).join());
  expect(new Set(many).size).toBeGreaterThan(2);
});

test('a chosen value is used, and a value that is no option gives the usual value', () => {
  expect(words(decide(startPlan(5), maker, { chosen: { count: '3' } }))).toHaveLength(3);
  expect(words(decide(startPlan(5), maker, { chosen: { count: '99' } }))).toHaveLength(2);
});

test('a pinned part stays through a new sheet, and changes once it is unpinned', () => {
  const pinned = makePart(maker, startPlan(5), input).blocks;
  const plan = renew(decide(startPlan(5), maker, { pinned }), 6);
  expect(makePart(maker, plan, input).blocks).toEqual(pinned);
  expect(words(decide(plan, maker, { pinned: null }))).toEqual(words(startPlan(6)));
});

test('a new sheet keeps the choices and the parts left out', () => {
  const plan = renew(decide(startPlan(5), maker, { out: true, chosen: { count: '1' } }), 9);
  expect(planOf(plan, maker)).toEqual({ seed: 9, out: true, chosen: { count: '1' }, pinned: null });
});

test('a stored plan is read again, and any other value gives no plan or a valid plan', () => {
  const { blocks } = makePart(maker, startPlan(5), input);
  const plan = decide(startPlan(5), maker, { pinned: blocks, out: true });
  expect(parsePlan(JSON.parse(JSON.stringify(plan)))).toEqual(plan);
  for (const value of [null, 3, [], {}, { seed: 'x' }]) expect(parsePlan(value)).toBeNull();
  expect(parsePlan({ seed: 1, parts: { a: 7, b: { pinned: [{}], chosen: { x: 1 } } } })).toEqual({
    seed: 1,
    parts: { b: { seed: 1, out: false, chosen: {}, pinned: null } },
  });
});
