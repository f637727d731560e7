import fc from 'fast-check';
import { expect, test } from 'vitest';
import herons from '../../../profiles/groups/herons.json' with { type: 'json' };
import steadySteps from '../../../profiles/sequences/steady-steps.json' with { type: 'json' };
import { parseGroup, parseSequence } from '../../analyze/index.ts';
import type { Group } from '../../analyze/types.ts';
import { mayDelete, type PatternList, placeOf, putPattern, takePattern } from './group-state.ts';

const group = { ...parseGroup(herons), alsoTaught: [], notYet: [] };
const sequence = parseSequence(steadySteps);
const patterns = sequence.steps.flatMap(({ teaches }) => teaches);

const lists = fc.constantFrom<PatternList>('alsoTaught', 'notYet');
const edits = fc.array(fc.record({ list: lists, puts: fc.boolean(), pattern: fc.constantFrom(...patterns) }));

test('after any edits, each pattern is only on the list it was last put on', () => {
  fc.assert(
    fc.property(edits, (made) => {
      const on = new Map<string, PatternList>();
      let now: Group = group;
      for (const { list, puts, pattern } of made) {
        // The picker offers only patterns that are not on its list, and removes only patterns that are on it.
        if (puts === now[list].includes(pattern)) continue;
        now = (puts ? putPattern : takePattern)(now, list, pattern);
        if (puts) on.set(pattern, list);
        else on.delete(pattern);
      }
      for (const list of ['alsoTaught', 'notYet'] as const)
        expect(new Set(now[list])).toEqual(
          new Set([...on].flatMap(([pattern, its]) => (its === list ? [pattern] : []))),
        );
      expect(now).toEqual({ ...group, alsoTaught: now.alsoTaught, notYet: now.notYet });
    }),
  );
});

test('placeOf names the step of every pattern, and differs once the group has been taught the step', () => {
  for (const [i, { teaches }] of sequence.steps.entries())
    for (const pattern of teaches) {
      const first = sequence.steps.findIndex((step) => step.teaches.includes(pattern)) + 1;
      if (first !== i + 1) continue;
      const before = placeOf(pattern, { ...group, step: i }, sequence);
      const after = placeOf(pattern, { ...group, step: i + 1 }, sequence);
      expect([before, after].map((says) => says.match(/\d+/)?.[0])).toEqual([`${i + 1}`, `${i + 1}`]);
      expect(before).not.toBe(after);
    }
});

test('placeOf is empty for a pattern that no step teaches, and for a group without a sequence', () => {
  expect(placeOf('constructor', group, sequence)).toBe('');
  expect(placeOf(patterns[0]!, group, null)).toBe('');
});

test('the last group cannot be deleted', () => {
  expect(mayDelete({ herons: group })).toBe(false);
  expect(mayDelete({ herons: group, plovers: group })).toBe(true);
});
