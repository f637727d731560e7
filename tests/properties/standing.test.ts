import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { catalogue } from '../../src/analyze/catalogue/catalogue.ts';
import { compileGroup } from '../../src/analyze/standing/compile-group.ts';
import { createJudge, type Judge } from '../../src/analyze/standing/judge.ts';
import { tallyText, vet } from '../../src/analyze/standing/vet.ts';
import type { Group } from '../../src/analyze/types.ts';
import { analyzer, group, ids, sequence, teachable, text, word } from '../fakes/made-up.ts';

/** Laws of the standing of words for a group. */
const seeded = { seed: 20, numRuns: 500 };
const readable = new Set(['reads', 'fresh', 'by-sight']);

test('the patterns of these laws are in the catalogue', () => {
  expect(ids.filter((id) => !catalogue.some((row) => row.id === id))).toEqual([]);
});

describe('laws of standing', () => {
  test('a group that knows more never reads fewer words', () => {
    fc.assert(
      fc.property(
        analyzer,
        group,
        sequence,
        fc.constantFrom(...teachable),
        word,
        (analyze, known, steps, more, sight) => {
          const before = { ...known, sequence: steps.id, step: 1 };
          const wider: Group[] = [
            { ...before, step: steps.steps.length },
            { ...before, alsoTaught: [...before.alsoTaught, more] },
            { ...before, notYet: before.notYet.filter((id) => id !== more) },
            { ...before, bySight: [...before.bySight, sight] },
          ];
          const judge = createJudge(analyze, compileGroup(before, steps));
          for (const after of wider) {
            const judgeAfter = createJudge(analyze, compileGroup(after, steps));
            for (const key of ['mast', 'moss', 'sofa', 'Otto', 'masts']) {
              if (readable.has(judge(key).standing))
                expect(readable.has(judgeAfter(key).standing)).toBe(true);
            }
          }
        },
      ),
      seeded,
    );
  });

  test('the counts of a report add up', () => {
    fc.assert(
      fc.property(analyzer, group, text, fc.nat(9), (analyze, known, words, skipped) => {
        const judge = createJudge(analyze, compileGroup(known, null));
        const { tally, words: entries } = vet({ words, skipped }, judge);
        expect(tallyText({ words, skipped }, judge)).toEqual(tally);
        const { running, reads, fresh, bySight, names, unsure, beyond } = tally;
        const total = words.reduce((sum, [, count]) => sum + count, 0);
        expect(reads + fresh + bySight + unsure + beyond).toBe(running);
        expect(running + names + tally.skipped).toBe(total + skipped);
        expect(entries.reduce((sum, { count }) => sum + count, 0)).toBe(total);
        expect(tally.skipped).toBeGreaterThanOrEqual(skipped);
      }),
      seeded,
    );
  });

  test('the order of the words in a text does not change the report', () => {
    fc.assert(
      fc.property(analyzer, group, text, (analyze, known, words) => {
        const judge = () => createJudge(analyze, compileGroup(known, null));
        expect(vet({ words: [...words].reverse(), skipped: 0 }, judge())).toEqual(
          vet({ words, skipped: 0 }, judge()),
        );
      }),
      seeded,
    );
  });

  test('teaching one gap makes exactly as many words readable as the report says', () => {
    fc.assert(
      fc.property(analyzer, group, text, (analyze, known, words) => {
        const judgeFor = (learnt: Group) => createJudge(analyze, compileGroup(learnt, null));
        const readableWords = (judge: Judge) => {
          const { reads, fresh, bySight } = tallyText({ words, skipped: 0 }, judge);
          return reads + fresh + bySight;
        };
        const judge = judgeFor(known);
        const { gaps } = vet({ words, skipped: 0 }, judge);
        const before = readableWords(judge);
        for (const { pattern, opens } of gaps) {
          const judgeAfter = judgeFor({
            ...known,
            alsoTaught: [...known.alsoTaught, pattern],
            notYet: known.notYet.filter((id) => id !== pattern),
          });
          // The count includes names that become readable, which were no running words before.
          const namesOpened = countNamesOpened(judge, judgeAfter, words);
          expect(readableWords(judgeAfter) - before - namesOpened).toBe(opens);
        }
      }),
      seeded,
    );
  });
});

function countNamesOpened(judge: Judge, judgeAfter: Judge, words: [string, number][]) {
  const opened = words.filter(
    ([key]) => judge(key).standing === 'name' && readable.has(judgeAfter(key).standing),
  );
  return opened.reduce((sum, [, count]) => sum + count, 0);
}
