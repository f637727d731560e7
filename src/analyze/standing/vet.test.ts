import { expect, test } from 'vitest';
import { groupOf } from '../../../tests/fakes/group.ts';
import { fakeAnalyzer } from '../../../tests/fakes/word-analyzer.ts';
import type { Group } from '../types.ts';
import { compileGroup } from './compile-group.ts';
import { createJudge } from './judge.ts';
import { createReporter, vet } from './vet.ts';

const analyzer = fakeAnalyzer({
  map: [{ requires: ['m', 'short-a', 'p'] }],
  rain: [{ requires: ['ai', 'n', 'r'] }],
  pain: [{ requires: ['ai', 'n', 'p'] }],
  about: [{ requires: ['ou-ow', 'schwa-a'] }],
  said: [{ requires: ['irregular'] }],
  duke: [{ requires: ['u_e-oo'] }],
});
const report = (group: Partial<Group>, words: [string, number][], skipped = 0) =>
  vet({ words, skipped }, createJudge(analyzer, compileGroup(groupOf(group), null)));

test('words are counted by standing, with names and skipped tokens counted separately', () => {
  const { tally } = report(
    { alsoTaught: ['m', 'short-a', 'p'], bySight: ['the'] },
    [
      ['map', 3],
      ['the', 4],
      ['rain', 2],
      ['Duke', 5],
      ['vop', 1],
    ],
    7,
  );
  expect(tally).toEqual({
    running: 10,
    reads: 3,
    fresh: 0,
    bySight: 4,
    names: 5,
    unsure: 1,
    beyond: 2,
    skipped: 7,
    reach: 70,
  });
});

test('a report without words has the same counts and gaps', () => {
  const judge = createJudge(analyzer, compileGroup(groupOf({ alsoTaught: ['m', 'short-a', 'p'] }), null));
  const text = {
    words: [
      ['map', 2],
      ['rain', 3],
      ['Rain^', 1],
      ['pain', 1],
      ['said', 2],
      ['Duke', 1],
    ] as [string, number][],
    skipped: 2,
  };
  expect(createReporter(judge, { words: false })(text)).toEqual({ ...vet(text, judge), words: [] });
});

test('an empty text is fully readable', () => {
  expect(report({}, [])).toMatchObject({ words: [], gaps: [], tally: { running: 0, reach: 100 } });
});

test('words are sorted by standing and then count, and a capital splits a word only if its standings differ', () => {
  const { words } = report({ alsoTaught: ['m', 'short-a', 'p'] }, [
    ['map', 2],
    ['Map', 1],
    ['said', 3],
    ['rain', 1],
    ['duke', 2],
    ['Duke', 1],
  ]);
  expect(words.map(({ word, count, standing }) => `${standing} ${word} ${count}`)).toEqual([
    'beyond said 3',
    'beyond duke 2',
    'beyond rain 1',
    'reads map 3',
    'name duke 1',
  ]);
});

test('missing patterns are sorted by how many words each opens, then by how many words lack it', () => {
  const { gaps } = report({ alsoTaught: ['n', 'r'] }, [
    ['rain', 2],
    ['pain', 3],
    ['map', 1],
    ['said', 9],
  ]);
  expect(gaps).toEqual([
    { pattern: 'ai', opens: 2, words: ['pain', 'rain'] },
    { pattern: 'p', opens: 0, words: ['pain', 'map'] },
    { pattern: 'm', opens: 0, words: ['map'] },
    { pattern: 'short-a', opens: 0, words: ['map'] },
  ]);
});

test('a pattern also opens words whose patterns follow from it', () => {
  const group = { alsoTaught: ['ou-ow'], options: { schwa: 'flex' } } as const;
  expect(report(group, [['about', 2]]).gaps).toEqual([{ pattern: 'schwa-a', opens: 2, words: ['about'] }]);
  const both = report({ options: { schwa: 'flex' } }, [['about', 1]]);
  expect(both.gaps.map(({ pattern, opens }) => [pattern, opens])).toEqual([
    ['ou-ow', 0],
    ['schwa-a', 0],
  ]);
});

test('a report from a reporter for many texts equals the report on each text alone', () => {
  const judge = createJudge(analyzer, compileGroup(groupOf({ alsoTaught: ['n', 'r'] }), null));
  const reportOn = createReporter(judge);
  const texts: [string, number][][] = [
    [['rain', 2]],
    [
      ['rain', 1],
      ['pain', 3],
      ['about', 1],
    ],
    [
      ['map', 1],
      ['Rain', 1],
      ['rain', 2],
      ['Duke', 1],
    ],
    [['rain', 2]],
  ];
  for (const words of texts)
    expect(reportOn({ words, skipped: 1 })).toEqual(vet({ words, skipped: 1 }, judge));
  expect(reportOn({ words: texts[0]!, skipped: 0 }).gaps).toEqual([
    { pattern: 'ai', opens: 2, words: ['rain'] },
  ]);
});
