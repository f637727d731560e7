import { expect, test } from 'vitest';
import { patternsInShort } from './patterns-in-short.ts';

test('what neighbours have in common is said once', () => {
  expect(patternsInShort(['start-bl', 'start-cl', 'ai'])).toBe(
    'bl, cl at the start of a word; ai as in rain',
  );
});

test('others are said one by one, and an id nobody knows as it is', () => {
  expect(patternsInShort(['ai', 'no-such'])).toBe('ai as in rain; no-such');
});
