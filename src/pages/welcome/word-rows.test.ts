import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { loadAnalyzer } from '../../../tests/load-analyzer.ts';
import { compileGroup, createJudge, parseGroup, parseSequence } from '../../analyze/index.ts';
import type { Sequence } from '../../analyze/types.ts';
import { makeWordRows } from './word-rows.ts';

const words = readFileSync(new URL('../../../public/data/lesson-words.tsv', import.meta.url), 'utf8')
  .split('\n', 4000)
  .slice(400)
  .map((line) => line.split('\t')[0]!);
const engine = loadAnalyzer();

describe.each(['steady-steps', 'second-tide', 'england-2013'])('rows of words for %s', (name) => {
  const file = new URL(`../../../profiles/sequences/${name}.json`, import.meta.url);
  const sequence = parseSequence(JSON.parse(readFileSync(file, 'utf8')));
  const group = parseGroup({ name: 'Herons', sequence: sequence.id, step: 0 });
  const rows = makeWordRows(words, engine, sequence);
  const readAt = (step: number, word: string): boolean =>
    /reads|fresh/.test(createJudge(engine, compileGroup({ ...group, step }, sequence))(word).standing);

  test('number ten, have four words each and end at the last step', () => {
    expect(rows).toHaveLength(10);
    expect(rows.map((row) => row.words.length)).toEqual(Array(10).fill(4));
    expect(rows.at(-1)!.step).toBe(sequence.steps.length);
    if (process.env.SHOW)
      console.log(rows.map(({ step, words }) => `${step}: ${words.join(' ')}`).join('\n'));
  });

  test('are decodable at their own step but not at the step of the row before', () => {
    for (const [i, { step, words }] of rows.entries())
      for (const word of words) {
        expect(readAt(step, word), `${word} at ${step}`).toBe(true);
        expect(readAt(rows[i - 1]?.step ?? 0, word), `${word} before ${step}`).toBe(false);
      }
  });
});

test('a sequence of three steps has at most three rows, and no row contains a by-sight word', () => {
  const steps = [['m', 's', 't', 'short-a'], ['p', 'n'], ['short-i']].map((teaches, i) => ({
    title: '',
    teaches,
    bySight: i === 0 ? ['sat'] : [],
  }));
  const sequence: Sequence = { id: 'quay', name: 'Quay', source: '', licence: '', note: '', steps };
  const rows = makeWordRows(['sat', 'mat', 'man', 'tin', 'the'], engine, sequence);
  expect(rows).toEqual([
    { step: 1, words: ['mat'] },
    { step: 2, words: ['man'] },
    { step: 3, words: ['tin'] },
  ]);
});
