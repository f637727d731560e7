import { expect, test } from 'vitest';
import { loadAnalyzer } from '../../../tests/load-analyzer.ts';
import { parseGroup, parseSequence } from '../../analyze/index.ts';
import { costOfGaps } from './cost-of-gaps.ts';

const engine = loadAnalyzer();
const about = { id: 'ours', name: 'Ours', source: 'The school', licence: 'Its own' };
const group = parseGroup({ name: 'Plovers', sequence: 'ours', step: 1 });

test('a pattern that is never taught costs the words that need it, and the costliest pattern comes first', () => {
  const sequence = parseSequence({
    ...about,
    steps: [{ teaches: ['h', 's', 't', 'sh', 'short-a', 'short-i'], bySight: ['this'] }],
  });
  const costs = costOfGaps(['is', 'his', 'has', 'hat', 'ship', 'this'], engine, group, sequence);
  expect(costs).toEqual([
    { pattern: 's-z', words: ['is', 'his', 'has'] },
    { pattern: 'p', words: ['ship'] },
  ]);
});

test('a pattern that the group was taught in addition costs nothing', () => {
  const sequence = parseSequence({ ...about, steps: [{ teaches: ['h', 'short-i'], bySight: [] }] });
  const taught = { ...group, alsoTaught: ['s-z'] };
  expect(costOfGaps(['his'], engine, taught, sequence)).toEqual([]);
});
