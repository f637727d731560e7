import { expect, test } from 'vitest';
import type { KnownWord } from '../known-words.ts';
import type { LessonInput } from '../lesson-input.ts';
import { createPicker } from '../picker.ts';
import { chooseWords } from './choose-words.ts';

const word = (word: string, requires: string[], more: Partial<KnownWord> = {}): KnownWord =>
  ({
    word,
    standing: 'reads',
    homograph: false,
    reading: { source: 'dictionary', requires, units: [], base: null },
    ...more,
  }) as KnownWord;

/** A group at the third of ten steps, which teaches ai. The step before taught sh, and a step long ago taught m. */
const input = {
  bank: { find: () => ({ rank: 1 }) },
  known: {
    words: [
      ...Array.from({ length: 20 }, (_, i) => word(`m${i}`, ['m'])),
      word('said', ['ai'], { standing: 'by-sight' }),
      word('raid', ['ai'], { homograph: true }),
      word('ship', ['sh', 'm']),
      word('rain', ['ai']),
      word('shop', ['sh']),
      word('mail', ['ai', 'm']),
    ],
  },
  focus: ['ai'],
  group: { alsoTaught: [], step: 3 },
  sequence: {
    steps: ['p', 'sh', 'ai', 'ee', 'oa', 'igh', 'ar', 'or', 'ur', 'ow'].map((id) => ({ teaches: [id] })),
  },
} as unknown as LessonInput;

test.each([1, 2, 3, 4, 5, 6])(
  'words of the step come first, then of earlier steps; by-sight words and homographs are left out (seed %i)',
  (seed) => {
    const chosen = (count: number) =>
      chooseWords(input, count, createPicker(seed))
        .map((each) => each.word)
        .toSorted();
    expect(chosen(4)).toEqual(['mail', 'rain', 'ship', 'shop']);
    expect(chosen(2)).toEqual(['mail', 'rain']);
    expect(chosen(99)).toHaveLength(24);
    expect(chosen(99)).not.toContain('said');
    expect(chosen(99)).not.toContain('raid');
  },
);
