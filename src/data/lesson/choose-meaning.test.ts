import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { chooseMeaning, readOwnMeanings, type Sense } from './choose-meaning.ts';

const none = { base: null, affixes: [] };
const isPlain = (word: string): boolean => word !== 'aquatic';

function sense(words: readonly string[], definition: string, count: number): Sense {
  return { synset: { part: 'n', words, definition, examples: [], pointers: [], coarse: false }, count };
}

test('the usual sense, unless a next one as good as common is plainer', () => {
  const senses = [
    sense(['gull'], 'an aquatic bird', 4),
    sense(['gull'], 'a grey and white bird of the coast', 3),
    sense(['gull'], 'a person who is easily tricked', 1),
  ];
  expect(chooseMeaning('gull', senses, none, () => true)).toBe('an aquatic bird');
  expect(chooseMeaning('gull', senses, none, isPlain)).toBe('a grey and white bird of the coast');
  expect(chooseMeaning('gull', [senses[0]!, senses[2]!], none, isPlain)).toBe('');
});

test('not with the word itself or a form of it', () => {
  expect(chooseMeaning('leap', [sense(['leap'], 'move forward by leaps', 4)], none, isPlain)).toBe('');
  expect(chooseMeaning('car', [sense(['car'], 'what careful people drive', 4)], none, isPlain)).not.toBe('');
});

test('not what is a name in that sense', () => {
  expect(chooseMeaning('windows', [sense(['Windows'], 'a system for computers', 4)], none, isPlain)).toBe('');
});

test('forms of other words have none, save those that are words of their own', () => {
  const affix = (text: string) => [{ text, kind: 'suffix', change: 'none' } as const];
  const own = [sense(['meeting'], 'when people come together', 24)];
  expect(chooseMeaning('meeting', own, { base: 'meet', affixes: affix('ing') }, isPlain)).not.toBe('');
  const rare = [sense(['mooring'], 'a place to tie up', 2)];
  expect(chooseMeaning('mooring', rare, { base: 'moor', affixes: affix('ing') }, isPlain)).toBe('');
  const nets = [sense(['nets'], 'what catches fish', 40)];
  expect(chooseMeaning('nets', nets, { base: 'net', affixes: affix('s') }, isPlain)).toBe('');
});

test('our own are short, without the word itself, one a word, in order, and of no word that no sheet should hold', () => {
  const own = [...readOwnMeanings()];
  expect(own.length).toBeGreaterThan(1400);
  expect(own.map(([word]) => word)).toEqual([...new Set(own.map(([word]) => word))].toSorted());
  const lists = readFileSync(new URL('../source/not-in-lessons.txt', import.meta.url), 'utf8').split('\n');
  const out = new Set(lists.filter((line) => !line.startsWith('#')).flatMap((line) => line.split(' ')));
  for (const [word, meaning] of own) {
    expect(meaning.length, word).toBeLessThanOrEqual(70);
    expect(meaning.match(/[a-z']+/gi), word).not.toContain(word);
    expect(out.has(word), word).toBe(false);
  }
});
