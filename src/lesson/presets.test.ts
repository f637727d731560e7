import { expect, test } from 'vitest';
import { decide, inOrder, movePart, parsePlan, planOf, startPlan } from './lesson-plan.ts';
import { parts } from './parts.ts';
import { applyPreset, onePage, parsePresets, presetOf } from './presets.ts';

const onSheet = (plan = startPlan(5)) =>
  inOrder(plan, parts)
    .filter((maker) => !planOf(plan, maker).out)
    .map(({ id }) => id);

test('a new lesson has the seven usual parts in the usual order', () => {
  expect(onSheet()).toEqual([
    'review',
    'building',
    'word-lists',
    'vocabulary',
    'dictation',
    'homophones',
    'smooth-reading',
  ]);
});

test('a moved part stays in its new place, and a part the order does not name keeps its neighbour', () => {
  const moved = movePart(startPlan(5), parts, 'dictation', -99);
  expect(onSheet(moved)[0]).toBe('dictation');
  expect(inOrder(moved, parts)).toHaveLength(parts.length);
  const old = { ...startPlan(5), order: ['dictation', 'review'] };
  expect(
    inOrder(old, parts)
      .map(({ id }) => id)
      .slice(0, 3),
  ).toEqual(['dictation', 'homophones', 'smooth-reading']);
  expect(new Set(inOrder(old, parts)).size).toBe(parts.length);
  expect(movePart(moved, parts, 'nobody', 1)).toBe(moved);
});

test('a lesson in one page has five parts, 25 minutes, and only choices its parts have', () => {
  const plan = applyPreset(startPlan(5), onePage, parts);
  expect(onSheet(plan)).toEqual(onePage.parts.map(({ id }) => id));
  expect(onePage.parts.reduce((sum, { minutes = 0 }) => sum + minutes, 0)).toBe(25);
  expect(parsePlan(JSON.parse(JSON.stringify(plan)))).toEqual(plan);
});

test('a preset of the teacher’s own gives another lesson the same parts, order and choices', () => {
  let plan = applyPreset(startPlan(5), onePage, parts);
  const sort = parts.find(({ id }) => id === 'word-sort')!;
  plan = movePart(decide(plan, sort, { out: false, chosen: { spellings: '2' } }), parts, 'word-sort', -3);
  const preset = presetOf(plan, '  Mondays ', inOrder(plan, parts));
  const [read] = parsePresets(JSON.parse(JSON.stringify([preset])));
  expect(read).toEqual(preset);
  expect(read!.name).toBe('Mondays');
  const other = applyPreset(startPlan(9), read!, parts);
  expect(onSheet(other)).toEqual(onSheet(plan));
  expect(planOf(other, sort).chosen).toEqual({ spellings: '2' });
  expect(planOf(other, sort).seed).toBe(9);
});

test('a value that is no list of presets gives no presets', () => {
  for (const value of [null, 3, {}, [1], [{ name: '', parts: [] }], [{ name: 'a', parts: [{}] }]])
    expect(parsePresets(value)).toEqual([]);
});
