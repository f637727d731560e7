import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { catalogue } from '../../src/analyze/catalogue/catalogue.ts';
import { compileGroup } from '../../src/analyze/standing/compile-group.ts';
import { createJudge } from '../../src/analyze/standing/judge.ts';
import { vet } from '../../src/analyze/standing/vet.ts';
import type { Group, GroupOptions, Reading } from '../../src/analyze/types.ts';
import { groupOf } from '../fakes/group.ts';
import { fakeAnalyzer } from '../fakes/word-analyzer.ts';

/**
 * Laws of standing, on words invented from few patterns so that they meet often. The patterns are those on
 * which options hang: weak vowels, short o, blends, syllable counts, endings, and irregular spelling.
 */
const ids = [
  'm',
  's',
  'w',
  'wh',
  'short-a',
  'short-o',
  'o-aw',
  'schwa-a',
  'schwa-o',
  'long-o',
  'start-sm',
  'end-st',
  'type-open',
  'syllables-2',
  'syllables-3',
  'suffix-s',
  'change-drop-e',
  'possessive',
  'or',
  'or-weak',
  'irregular',
];
const teachable = ids.filter((id) => id !== 'irregular');
const some = (from: readonly string[]) => fc.subarray([...from]);
const word = fc.constantFrom('mast', 'moss', 'toast', 'sofa', 'Odd', 'odd', 'Ines', 'sailor', 'masts');

const reading: fc.Arbitrary<Partial<Reading> & Pick<Reading, 'requires'>> = fc.record({
  requires: some(ids),
  source: fc.constantFrom('dictionary', 'derived', 'rule', 'guess', 'none'),
  base: fc.constantFrom(null, 'mast', 'sofa'),
  affixes: fc.constantFrom([], [{ text: 's', kind: 'suffix', change: 'none' }]),
});
const analyzer = fc
  .tuple(fc.dictionary(word, fc.array(reading, { maxLength: 3 })), fc.array(word))
  .map(([words, homographs]) => fakeAnalyzer(lowerKeys(words), homographs));

const options: fc.Arbitrary<GroupOptions> = fc.record(
  {
    schwa: fc.constantFrom('taught', 'flex', 'strict'),
    shortOMerged: fc.boolean(),
    wh: fc.constantFrom('counted', 'free'),
    blends: fc.constantFrom('counted', 'free'),
    irregularForms: fc.constantFrom('counted', 'free'),
    syllableTypes: fc.constantFrom('counted', 'free'),
    maxSyllables: fc.integer({ min: 1, max: 4 }),
  },
  { requiredKeys: [] },
);
const sequence = fc.array(some(teachable), { minLength: 1, maxLength: 4 }).map((steps) => ({
  id: 'made-up',
  name: 'Made up',
  source: 'test',
  licence: 'MIT',
  steps: steps.map((teaches) => ({ teaches, bySight: [] })),
}));
const group: fc.Arbitrary<Group> = fc
  .record({
    alsoTaught: some(teachable),
    notYet: some(teachable),
    bySight: fc.array(word, { maxLength: 2 }),
    names: fc.array(word, { maxLength: 2 }),
    options,
  })
  .map(groupOf);
const text = fc.array(fc.tuple(word, fc.integer({ min: 1, max: 9 })), { maxLength: 12 });
const seeded = { seed: 20, numRuns: 500 };
const readable = new Set(['reads', 'fresh', 'by-sight']);

test('the patterns of these laws are in the catalogue', () => {
  expect(ids.filter((id) => !catalogue.some((row) => row.id === id))).toEqual([]);
});

describe('laws', () => {
  test('a group that knows more never reads less', () => {
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
            for (const key of ['mast', 'moss', 'sofa', 'Odd', 'masts']) {
              if (readable.has(judge(key).standing))
                expect(readable.has(judgeAfter(key).standing)).toBe(true);
            }
          }
        },
      ),
      seeded,
    );
  });

  test('counts add up', () => {
    fc.assert(
      fc.property(analyzer, group, text, fc.nat(9), (analyze, known, words, skipped) => {
        const { tally, words: entries } = vet(
          { words, skipped },
          createJudge(analyze, compileGroup(known, null)),
        );
        const { running, reads, fresh, bySight, names, unsure, beyond } = tally;
        expect(reads + fresh + bySight + unsure + beyond).toBe(running);
        expect(running + names).toBe(words.reduce((sum, [, count]) => sum + count, 0));
        expect(entries.reduce((sum, { count }) => sum + count, 0)).toBe(running + names);
        expect(tally.skipped).toBe(skipped);
      }),
      seeded,
    );
  });

  test('the order of the text does not matter', () => {
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

  test('teaching a gap alone makes exactly the words readable that it opens', () => {
    fc.assert(
      fc.property(analyzer, group, text, (analyze, known, words) => {
        const readableWords = (learnt: Group) => {
          const { tally } = vet({ words, skipped: 0 }, createJudge(analyze, compileGroup(learnt, null)));
          return tally.reads + tally.fresh + tally.bySight;
        };
        const { gaps } = vet({ words, skipped: 0 }, createJudge(analyze, compileGroup(known, null)));
        for (const { pattern, opens } of gaps) {
          const learnt = {
            ...known,
            alsoTaught: [...known.alsoTaught, pattern],
            notYet: known.notYet.filter((id) => id !== pattern),
          };
          // A name that becomes readable is counted too, but was no running word before.
          const namesOpened = countNamesOpened(analyze, known, learnt, words);
          expect(readableWords(learnt) - readableWords(known) - namesOpened).toBe(opens);
        }
      }),
      seeded,
    );
  });
});

function countNamesOpened(
  analyze: ReturnType<typeof fakeAnalyzer>,
  before: Group,
  after: Group,
  words: [string, number][],
) {
  const [judge, judgeAfter] = [before, after].map((known) => createJudge(analyze, compileGroup(known, null)));
  const opened = words.filter(
    ([key]) => judge!(key).standing === 'name' && readable.has(judgeAfter!(key).standing),
  );
  return opened.reduce((sum, [, count]) => sum + count, 0);
}

function lowerKeys<V>(words: Record<string, V>): Record<string, V> {
  return Object.fromEntries(Object.entries(words).map(([key, value]) => [key.toLowerCase(), value]));
}
