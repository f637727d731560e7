import { expect, test } from 'vitest';
import { groupOf } from '../../tests/fakes/group.ts';
import { fakeAnalyzer } from '../../tests/fakes/word-analyzer.ts';
import { climbText, compileGroup, createClimber, createJudge, tallyText } from '../analyze/index.ts';
import { climbWithStoryWords, judgeWithStoryWords } from './with-story-words.ts';

const analyzer = fakeAnalyzer({
  map: [{ requires: ['m', 'short-a', 'p'] }],
  lantern: [{ requires: ['er'] }],
  lanterns: [{ requires: ['er', 'suffix-s'] }],
});
const steps = [
  { teaches: ['m', 'short-a', 'p'], bySight: [] },
  { teaches: ['er'], bySight: [] },
];
const sequence = { id: 'two', name: 'Two', source: 'test', licence: 'MIT', steps };
const judgeAt = (step: number) =>
  createJudge(analyzer, compileGroup(groupOf({ sequence: 'two', step }), sequence));

test('a word to pre-teach is by-sight in capitals or small letters, but its other forms are not', () => {
  const judge = judgeWithStoryWords(judgeAt(0), ['lantern', 'falk']);
  expect(['lantern', 'Lantern', 'Falk', 'lanterns', 'map'].map((key) => judge(key).standing)).toEqual([
    'by-sight',
    'by-sight',
    'by-sight',
    'beyond',
    'beyond',
  ]);
  expect(judge.ifTaught('suffix-s')('lantern').standing).toBe('by-sight');
  expect(['lantern', 'map'].map(judge.standingFor(judgeAt(1).group))).toEqual(['by-sight', 'fresh']);
});

test('the climb counts a word to pre-teach as by-sight at every step', () => {
  const counts = {
    words: [
      ['map', 3],
      ['lantern', 2],
      ['Falk', 1],
      ['lanterns', 4],
    ] as const,
    skipped: 0,
  };
  const words = ['lantern', 'falk'];
  const climber = createClimber(analyzer, groupOf({ sequence: 'two' }), sequence);
  const { reach } = climbText(counts, climbWithStoryWords(climber, words));
  const atSteps = [0, 1, 2].map((step) => tallyText(counts, judgeWithStoryWords(judgeAt(step), words)).reach);
  expect(reach).toEqual(atSteps);
  expect(reach).toEqual([30, 60, 60]);
  expect(climbText(counts, climber).reach).not.toEqual(reach);
});

test('without story words the judge is returned unchanged', () => {
  const judge = judgeAt(1);
  expect(judgeWithStoryWords(judge, [])).toBe(judge);
});
