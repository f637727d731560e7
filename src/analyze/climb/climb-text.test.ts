import { expect, test } from 'vitest';
import { groupOf } from '../../../tests/fakes/group.ts';
import { fakeAnalyzer } from '../../../tests/fakes/word-analyzer.ts';
import type { Group, Sequence, WordKey } from '../types.ts';
import { climbText } from './climb-text.ts';
import { createClimber } from './create-climber.ts';

const sequence: Sequence = {
  id: 'four',
  name: 'Four',
  source: 'test',
  licence: 'MIT',
  steps: [
    { teaches: ['m', 'p', 'short-a'], bySight: [] },
    { teaches: ['ai', 'n', 'r'], bySight: ['said'] },
    { teaches: ['ea-long-e', 'l', 'd'], bySight: [] },
    { teaches: ['ea-short-e', 'short-o', 'v'], bySight: [] },
  ],
};
const analyzer = fakeAnalyzer(
  {
    map: [{ requires: ['m', 'short-a', 'p'] }],
    rain: [{ requires: ['ai', 'n', 'r'] }],
    said: [{ requires: ['irregular', 's'] }],
    lead: [{ requires: ['d', 'ea-long-e', 'l'] }, { requires: ['d', 'ea-short-e', 'l'] }],
    either: [{ requires: ['ai'] }, { requires: ['short-a'] }],
    bram: [{ requires: ['m', 'r', 'short-a'] }],
    vop: [{ requires: ['v', 'short-o', 'p'], source: 'guess' }],
  },
  ['lead'],
);
const climberFor = (group: Partial<Group>) =>
  createClimber(analyzer, groupOf({ sequence: 'four', ...group }), sequence);

test.each<[WordKey, Partial<Group>, reads: number | null, counts: number | null]>([
  ['map', {}, 1, 0],
  ['map', { alsoTaught: ['m', 'p', 'short-a'] }, 0, 0],
  ['map', { notYet: ['p'] }, null, 0],
  // The current step of the group makes no difference.
  ['rain', { step: 4 }, 2, 0],
  ['said', {}, 2, 0],
  ['said', { bySight: ['Said'] }, 0, 0],
  // Two different words with one spelling can be read once both are readable. One word with two pronunciations can be
  // read once either is readable.
  ['lead', {}, 4, 0],
  ['either', {}, 1, 0],
  // Names count from the step at which they can be read.
  ['Bram', {}, 2, 2],
  ['Lead', {}, 4, 3],
  ['vop', {}, null, 0],
  ['Vop', {}, null, null],
  ['map', { skip: ['map'] }, null, null],
  ['unheard-of', {}, null, 0],
])('the climber gives the right steps for %s with %j', (key, group, reads, counts) => {
  expect(climberFor(group)(key)).toEqual({ reads, counts });
});

test('the reach at each step matches a count by hand', () => {
  const words: [WordKey, number][] = [
    ['map', 4],
    ['rain', 3],
    ['said', 2],
    ['Bram', 5],
    ['vop', 1],
  ];
  const climb = climbText({ words, skipped: 9 }, climberFor({}));
  // The counts are 0 of 10, 4 of 10, then 14 of 15 with Bram.
  expect(climb).toEqual({
    reach: [0, 40, 93.3, 93.3, 93.3],
    opens: [0, 4, 10, 0, 0],
    withHelp: null,
    alone: null,
    opensMost: 2,
  });
});

test('a mark is reached at the first step with enough reach, which may be step 0', () => {
  const words: [WordKey, number][] = [
    ['map', 95],
    ['rain', 4],
    ['lead', 1],
  ];
  expect(climbText({ words, skipped: 0 }, climberFor({}))).toMatchObject({
    reach: [0, 95, 99, 99, 100],
    withHelp: 1,
    alone: 2,
    opensMost: 1,
  });
  const known = climberFor({ alsoTaught: ['m', 'p', 'short-a'] });
  expect(climbText({ words: words.slice(0, 1), skipped: 0 }, known)).toMatchObject({
    withHelp: 0,
    alone: 0,
    opensMost: null,
  });
});

test('an empty text has full reach at every step, and a group without a sequence has one step', () => {
  expect(climbText({ words: [], skipped: 0 }, climberFor({})).reach).toEqual([100, 100, 100, 100, 100]);
  const without = createClimber(analyzer, groupOf({ step: 3 }), null);
  expect(climbText({ words: [['map', 1]], skipped: 0 }, without)).toMatchObject({ reach: [0], opens: [0] });
});

test('a word is analysed only once', () => {
  const asked: WordKey[] = [];
  const counting = {
    analyze(key: WordKey) {
      asked.push(key);
      return analyzer.analyze(key);
    },
  };
  const climber = createClimber(counting, groupOf({}), sequence);
  expect(climber('map')).toBe(climber('map'));
  expect(asked).toEqual(['map']);
});
