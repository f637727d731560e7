import { expect, test } from 'vitest';
import { patternsInShort } from './patterns-in-short.ts';

test('the common words of neighbouring patterns are said once', () => {
  expect(patternsInShort(['start-bl', 'start-cl', 'ai'])).toBe(
    'bl, cl at the start of a word; ai as in rain',
  );
});

test('patterns without common words are named one by one, and an unknown id is given as it is', () => {
  expect(patternsInShort(['ai', 'no-such'])).toBe('ai as in rain; no-such');
});
