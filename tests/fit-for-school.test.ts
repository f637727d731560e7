import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readUnfitWords } from '../src/data/read-unfit-words.ts';
import { readOwnSwaps } from '../src/data/swap/read-own-swaps.ts';

const unfit = readUnfitWords();

// Outside sources: npm naughty-words and profane-words. Harmless words that our own list uses (attack, naked) are left
// out.
test('no word list shipped with the swaps contains a coarse word or an insult', () => {
  const own = new Set(
    readOwnSwaps().flatMap(({ word, swaps, cues }) =>
      [word, ...swaps, ...cues].flatMap((text) => text.split(' ')),
    ),
  );
  const table = readFileSync(new URL('../public/data/swaps.bin', import.meta.url), 'latin1');
  const listed = /"words":"([^"]*)"/.exec(table)![1]!.split(/[ _]/);
  expect(listed.length).toBeGreaterThan(20_000);
  expect(listed.filter((word) => unfit.has(word) && !own.has(word))).toEqual([]);
});

test('the common words shown to teachers contain no coarse word', () => {
  const common: string[] = JSON.parse(
    readFileSync(new URL('../public/data/common-words.json', import.meta.url), 'utf8'),
  );
  // Ordinary words that the outside lists contain because of a second meaning.
  const plain = new Set(
    'cause dish evidence general hole joint mark slow trial till beam bill ray van'.split(' '),
  );
  expect(common.filter((word) => unfit.has(word) && !plain.has(word))).toEqual([]);
});
