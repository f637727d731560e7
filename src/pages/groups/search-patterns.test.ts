import { expect, test } from 'vitest';
import { searchPatterns, teachable } from './search-patterns.ts';

const ids = (typed: string): string[] => searchPatterns(typed).map(({ id }) => id);

test.each([
  ['ai', 'ai'],
  ['a_e', 'a_e'],
  ['a-e', 'a_e'],
  ['a–e', 'a_e'],
  ['rain', 'ai'],
  ['shell', 'sh'],
  ['-ship', 'suffix-ship'],
  ['-ing', 'suffix-ing'],
  ['un-', 'prefix-un'],
  ['sh', 'sh'],
  ['soft c', 'soft-c'],
  ['consonant-le', 'consonant-le'],
  ['double the final', 'change-double'],
  ['silent kn', 'kn'],
  ['ss', 'ss'],
  ['u', 'short-u'],
  ['ch', 'ch'],
  ['ow', 'ow-long-o'],
  ['oo', 'oo-moon'],
  ['s', 's'],
  ['y', 'y'],
  ['short a', 'short-a'],
])('“%s” finds %s first', (typed, id) => {
  expect(ids(typed)[0]).toBe(id);
});

test.each([
  ['/ā/', ['a_e', 'ai', 'ay', 'long-a']],
  ['ā', ['a_e', 'ai', 'ay', 'long-a']],
  ['/k/', ['c', 'k', 'ck']],
  ['digraph', ['sh', 'ch', 'th']],
  ['-ed', ['suffix-ed-t', 'suffix-ed-d', 'suffix-ed-id']],
  ['r-controlled', ['ar', 'or', 'er']],
])('“%s” finds %j among others', (typed, wanted) => {
  expect(ids(typed)).toEqual(expect.arrayContaining(wanted));
});

// Searches by teachers’ names, each with a pattern that the name does not mean.
test.each([
  ['magic e', ['a_e', 'i_e', 'o_e', 'silent-e'], 'ai'],
  ['silent e', ['a_e', 've', 'se'], 'kn'],
  ['diphthong', ['oi', 'oy', 'ou-ow', 'ow-ow'], 'ai'],
  ['plural', ['suffix-s', 'suffix-es'], 'suffix-ed-t'],
  ['silent letters', ['kn', 'wr', 'mb'], 'a_e'],
  ['r blends', ['start-br', 'start-cr', 'start-str'], 'start-bl'],
  ['l blends', ['start-bl', 'start-spl'], 'start-br'],
  ['s blends', ['start-st', 'start-sp', 'start-str'], 'start-br'],
  ['r-controlled', ['ar', 'or', 'er'], 'r'],
  ['bossy r', ['ar', 'or', 'er'], 'r'],
  ['double consonants', ['ss', 'll', 'bb'], 'sh'],
  ['long a', ['a_e', 'ai', 'ay', 'long-a'], 'short-a'],
  ['short u', ['short-u'], 'schwa-u'],
])('“%s” finds %j, and finds %s only later or not at all', (typed, wanted, other) => {
  const found = ids(typed);
  expect(found).toEqual(expect.arrayContaining(wanted));
  const first = found.indexOf(other);
  expect(first === -1 || first >= wanted.length, `${typed}: ${found.slice(0, 12).join(' ')}`).toBe(true);
});

test('a search for a long vowel lists the spellings that are taught first at the top', () => {
  expect(ids('long a').slice(0, 3)).toEqual(expect.arrayContaining(['a_e']));
  expect(ids('long a').slice(0, 5)).toEqual(expect.arrayContaining(['a_e', 'ai', 'ay']));
});

test('a search for a sound finds no pattern without that sound', () => {
  expect(ids('/ā/')).not.toContain('short-a');
  expect(ids('/k/')).not.toContain('soft-c');
});

test('an empty search finds every pattern, and a nonsense search finds none', () => {
  expect(ids('  ')).toHaveLength(teachable.length);
  expect(ids('irregular')).not.toContain('irregular');
  expect(ids('xyzzy')).toEqual([]);
});
