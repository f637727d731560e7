import { expect, test } from 'vitest';
import { groupOf } from '../../tests/fakes/group.ts';
import { fakeAnalyzer } from '../../tests/fakes/word-analyzer.ts';
import { compileGroup, createJudge, parseSequence } from '../analyze/index.ts';
import { countPractice } from './count-practice.ts';

const engine = fakeAnalyzer({
  sit: [{ requires: ['s', 'short-i', 't'] }],
  see: [{ requires: ['ee', 's'] }],
  tree: [{ requires: ['ee', 'r', 't'] }],
  tail: [{ requires: ['ai', 'l', 't'] }],
  seal: [{ requires: ['ea-long-e', 'l', 's'] }],
  been: [{ requires: ['ee', 'b', 'n'] }],
});
const steps = [
  { teaches: ['s', 't', 'short-i'], bySight: [] },
  { teaches: ['ee', 'ai', 'oa'], bySight: ['been'] },
];
const sequence = parseSequence({
  id: 'ours',
  name: 'Ours',
  source: 'a test',
  licence: 'as the tests',
  steps,
});

test('decodable running words that practise the step are counted by pattern, by-sight words are not', () => {
  const judge = createJudge(
    engine,
    compileGroup(groupOf({ sequence: 'ours', step: 2, alsoTaught: ['l'] }), sequence),
  );
  const words: [string, number][] = [
    ['sit', 9],
    ['see', 2],
    ['See', 1],
    ['tree', 5],
    ['tail', 1],
    ['seal', 4],
    ['been', 3],
  ];
  expect(countPractice({ words, skipped: 0 }, judge, engine)).toEqual({
    words: 4,
    patterns: [
      { pattern: 'ee', words: 3 },
      { pattern: 'ai', words: 1 },
      { pattern: 'oa', words: 0 },
    ],
  });
});
