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

test('a sound finds no pattern without it', () => {
  expect(ids('/ā/')).not.toContain('short-a');
  expect(ids('/k/')).not.toContain('soft-c');
});

test('nothing finds everything that can be taught, and nonsense nothing', () => {
  expect(ids('  ')).toHaveLength(teachable.length);
  expect(ids('irregular')).not.toContain('irregular');
  expect(ids('xyzzy')).toEqual([]);
});
