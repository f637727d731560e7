import { expect, test } from 'vitest';
import type { KnownWords } from '../known-words.ts';
import { waysToSpell } from './ways-to-spell.ts';

test('an ending such as the ed of sailed is no way to spell a sound and is not counted as one', () => {
  const sail = [
    { letters: 's', sound: 'S', pattern: 's' },
    { letters: 'ai', sound: 'EY', pattern: 'ai' },
    { letters: 'l', sound: 'L', pattern: 'l' },
    { letters: 'ed', sound: 'D', pattern: 'suffix-ed-d', affix: 'suffix' },
  ];
  const dock = [
    { letters: 'd', sound: 'D', pattern: 'd' },
    { letters: 'o', sound: 'AA', pattern: 'short-o' },
    { letters: 'ck', sound: 'K', pattern: 'ck' },
  ];
  const words = [sail, dock].map((units, i) => ({
    word: ['sailed', 'dock'][i],
    rank: i + 1,
    standing: 'reads',
    homograph: false,
    reading: { source: 'dictionary', units, affixes: i === 0 ? ['suffix-ed-d'] : [], syllables: ['one'] },
  }));
  const analyses = words.map(({ reading }) => ({ readings: [reading] }));
  const known = { words, analyses, knows: () => true } as unknown as KnownWords;
  const [way, ...others] = waysToSpell('D', known);
  expect(way).toMatchObject({ letters: 'd', share: 100, examples: [{ word: 'dock' }] });
  expect(others).toEqual([]);
});
