import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { openSwaps } from '../swap/index.ts';
import { DROP_RULES } from './drop-rules.ts';
import { makeCut } from './make-cut.ts';
import { readWords } from './read-words.ts';
import { SPLIT_RULES } from './split-rules.ts';

const table = openSwaps(readFileSync('public/data/swaps.bin'));
const takesAn = (word: string): boolean => /^[aeiou]/.test(word);

describe.each([...DROP_RULES, ...SPLIT_RULES])('the rule “$name”', ({ example, counterExample, applies }) => {
  const use = (sentence: string): string[] =>
    applies(readWords(sentence, table), sentence).map((cut) => makeCut(sentence, cut, takesAn));

  test('makes its example shorter', () => expect(use(example[0])).toContain(example[1]));
  test('does not change its counter-example', () => expect(use(counterExample)).toEqual([]));
});

test('a relative clause is removed, but not a clause that tells what a person does', () => {
  const { applies } = DROP_RULES.find(({ name }) => name === 'relative clause')!;
  const use = (sentence: string): number => applies(readWords(sentence, table), sentence).length;
  expect(use('Bram, who was nine, ran to the quay.')).toBe(1);
  expect(use('Bram, who runs the ferry, ran to the quay.')).toBe(0);
});
