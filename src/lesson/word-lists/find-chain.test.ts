import { expect, test } from 'vitest';
import { createPicker } from '../picker.ts';
import { findChain } from './find-chain.ts';
import type { ListedWord } from './listed-words.ts';
import type { OneStep } from './one-unit-apart.ts';

const word = (family: string): ListedWord => ({ word: family, family }) as ListedWord;
const [pin, pan, pat] = [word('pin'), word('pan'), word('pat')];
const step = (to: ListedWord, place: number): OneStep => ({ to, place, kind: 'change' });
/** From pin one way goes straight to pan and ends there, and another way goes over pat. */
const steps = new Map([
  [pin, [step(pan, 1), step(pat, 2)]],
  [pan, [step(pin, 1)]],
  [pat, [step(pan, 1)]],
]);

test.each([1, 2, 3, 4, 5, 6])(
  'a word dropped at a dead end can be used on another path (seed %i)',
  (seed) => {
    const chain = findChain(
      [pin, pan],
      (from) => steps.get(from)!,
      new Set(['change']),
      3,
      createPicker(seed),
    );
    expect(chain.map((each) => each.word)).toEqual(['pin', 'pat', 'pan']);
  },
);
