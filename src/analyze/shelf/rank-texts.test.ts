import fc from 'fast-check';
import { expect, test } from 'vitest';
import { groupOf } from '../../../tests/fakes/group.ts';
import { loadAnalyzer } from '../../../tests/load-analyzer.ts';
import { starterSequences } from '../../host/store/sequences.ts';
import { climbText } from '../climb/climb-text.ts';
import { createClimber } from '../climb/create-climber.ts';
import { rememberWords } from '../climb/remember-words.ts';
import { compileGroup } from '../standing/compile-group.ts';
import { createJudge } from '../standing/judge.ts';
import { tallyText } from '../standing/vet.ts';
import type { WordKey } from '../types.ts';
import { createWordNumbers, numberWords } from './number-words.ts';
import { rankTexts, stepsOfWords } from './rank-texts.ts';

const analyzer = loadAnalyzer();
const remembered = rememberWords(analyzer);
const POOL: readonly WordKey[] =
  'the cat sat on mat ship rain boat light lighthouse harbour Wilma wilma Falk read read#0 read#1 wind tide Marigold hopping hoped wants want once one yacht qu zzz knots station 3 said the'.split(
    ' ',
  );

/** The test also finds the figures the slow way: it judges a text word by word at every step. */
test('a fit matches the judge at every step, for any texts and any groups of the starter sequences', () => {
  const texts = fc.array(fc.array(fc.tuple(fc.constantFrom(...POOL), fc.integer({ min: 1, max: 40 }))), {
    minLength: 1,
    maxLength: 4,
  });
  fc.assert(
    fc.property(
      texts,
      fc.constantFrom(...starterSequences()),
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.integer({ min: 50, max: 100 }),
      fc.subarray(['the', 'want', 'once']),
      (counts, sequence, share, mark, bySight) => {
        const step = Math.round(share * sequence.steps.length);
        const group = groupOf({ sequence: sequence.id, step, bySight, names: ['Rain'], skip: ['mat'] });
        const judges = [null, ...sequence.steps].map((_, at) =>
          createJudge(analyzer, compileGroup({ ...group, step: at }, sequence)),
        );
        const numbers = createWordNumbers();
        const numbered = counts.map((words) => numberWords(words, numbers));
        const steps = stepsOfWords(numbers, createClimber(remembered, group, sequence));
        while (!steps.follow(3));
        const fits = rankTexts(numbered, steps, { step, mark });
        for (const [i, words] of counts.entries()) {
          const tallies = judges.map((judge) => tallyText({ words, skipped: 0 }, judge));
          const reach = tallies.map((tally) => tally.reach);
          const tally = tallies[step]!;
          const fit = fits[i]!;
          expect(fit).toMatchObject({
            reach: tally.reach,
            running: tally.running,
            now: tally.reach >= mark,
          });
          if (fit.now) {
            const lastShort = reach.slice(0, step).findLastIndex((percent) => percent < mark);
            expect(fit.step).toBe(lastShort + 1);
          } else {
            const next = reach.findIndex((percent, at) => at > step && percent >= mark);
            expect(fit.step).toBe(next < 0 ? null : next);
          }
          if (step > 0)
            expect(fit.opened).toBe(
              climbText({ words, skipped: 0 }, createClimber(remembered, group, sequence)).opens[step],
            );
        }
      },
    ),
    { seed: 20261125, numRuns: 20 },
  );
});

test('an empty shelf gives no fits, an empty text has full reach, and a group without a sequence has no step', () => {
  const numbers = createWordNumbers();
  const steps = stepsOfWords(numbers, createClimber(analyzer, groupOf({}), null));
  expect(steps.follow()).toBe(true);
  expect(rankTexts([], steps, { step: 0, mark: 95 })).toEqual([]);
  const empty = rankTexts([new Uint32Array()], steps, { step: 0, mark: 95 });
  expect(empty).toEqual([{ reach: 100, running: 0, opened: 0, now: true, step: 0 }]);
  const cat = [numberWords([['cat', 2]], numbers)];
  expect(steps.follow()).toBe(true);
  expect(rankTexts(cat, steps, { step: 0, mark: 95 })).toEqual([
    { reach: 0, running: 2, opened: 0, now: false, step: null },
  ]);
});
