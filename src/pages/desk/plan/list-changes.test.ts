import { expect, test } from 'vitest';
import { groupOf } from '../../../../tests/fakes/group.ts';
import { fakeAnalyzer } from '../../../../tests/fakes/word-analyzer.ts';
import { compileGroup, createJudge } from '../../../analyze/index.ts';
import { createShader } from '../../../passage/shade-line.ts';
import type { Shortener } from '../../../shorten/index.ts';
import type { Swapper } from '../../../swap/index.ts';
import { listChanges } from './list-changes.ts';

const judge = createJudge(
  fakeAnalyzer({ enormous: [{ requires: ['ou-ow'] }], squall: [{ requires: ['ou-ow'] }] }),
  compileGroup(groupOf({ bySight: ['it', 'was', 'an', 'the', 'storm', 'big'] }), null),
);
/** A swapper that knows one swap, with its article. */
const swapper: Swapper = {
  findSwaps(sentence, start, end) {
    const word = sentence.slice(start, end);
    if (word !== 'enormous') return { word, swaps: [], best: 0, alternatives: ['teach', 'leave'] };
    const article = { start: start - 3, end: start - 1, text: 'a' };
    return { word, swaps: [{ text: 'big', score: 0.9, reads: true, article }], best: 1, alternatives: [] };
  },
};
/** A shortener that can shorten one sentence. */
const shortener: Shortener = {
  shorten: (sentence) =>
    sentence === 'It was an enormous squall.'
      ? { text: 'It was a squall.', steps: [{ rule: 'adjective', removed: 'enormous' }], isSafe: true }
      : null,
};
const text = '# The squall\nIt was the storm. It was an enormous squall.\nThe storm was big.';
const list = (known: string[] = []) =>
  listChanges(
    text,
    { shade: createShader(judge)(text), judge, swapper, shortener, known: new Set(known), longest: null },
    () => undefined,
  );

test('words and sentences have their places in the whole text', async () => {
  const { places, sentences } = await list();
  const shown = places.map(({ from, to }) => text.slice(from, to));
  expect(shown).toEqual(text.match(/[A-Za-z]+/g));
  expect(places.flatMap(({ readable }, i) => (readable ? [] : shown[i]))).toEqual([
    'squall',
    'enormous',
    'squall',
  ]);
  expect(sentences.map(({ from, to }) => text.slice(from, to))).toEqual([
    '# The squall',
    'It was the storm.',
    'It was an enormous squall.',
    'The storm was big.',
  ]);
});

test('a swap includes its article, a story word includes all its places, and a heading is not dropped', async () => {
  const { changes, articles } = await list();
  expect(changes).toEqual([
    { kind: 'swap', word: 'enormous', swap: 'big', places: [9] },
    { kind: 'story-word', word: 'squall', meaning: '', places: [1, 10] },
    { kind: 'story-word', word: 'enormous', meaning: 'big', places: [9] },
    // The first sentence of a paragraph.
    { kind: 'drop', sentence: 1, isNeeded: true },
    { kind: 'drop', sentence: 2 },
    { kind: 'drop', sentence: 3, isNeeded: true },
    expect.objectContaining({ kind: 'rewrite', sentence: 2, gone: [8, 9], comes: { words: 1, unread: 1 } }),
  ]);
  const [[place, { from, to, text: article }]] = [...articles] as [
    [number, { from: number; to: number; text: string }],
  ];
  expect([place, text.slice(from, to), article]).toEqual([9, 'an', 'a']);
});

test('a word that the passage already pre-teaches counts as readable', async () => {
  const { changes } = await list(['squall', 'enormous']);
  expect(changes.map(({ kind }) => kind)).toEqual(['drop', 'drop', 'drop', 'rewrite']);
});

test('the page gets a turn during the search for changes', async () => {
  let turns = 0;
  const finders = {
    shade: createShader(judge)(text),
    judge,
    swapper,
    shortener,
    known: new Set<string>(),
    longest: null,
  };
  await listChanges(text, finders, async () => {
    turns++;
  });
  expect(turns).toBeGreaterThanOrEqual(4);
});
