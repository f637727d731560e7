import { markWord } from '../../marks/mark-word.ts';
import type { PartMaker } from '../lesson-part.ts';
import { numberChoice } from '../number-choice.ts';
import { chooseWordsToDivide, typesOf } from './choose-words.ts';

const FEWEST = 3;
/** Words to divide into syllables and mark. The key has the words with dictionary marks. */
export const syllableDivision: PartMaker = {
  id: 'syllable-division',
  title: 'Syllable division',
  extra: true,
  use: 'Pupils divide longer words and mark their vowels; your key has the dictionary marks.',
  choices: () => [numberChoice('count', 'How many', [4, 6, 8, 10, 12], 8)],
  make(input, chosen, picker) {
    const count = Number(chosen('count')) || 8;
    const words = chooseWordsToDivide(input, count, picker);
    if (words.length < FEWEST) {
      return {
        blocks: [],
        says: 'The group can read too few words of two syllables yet. Put this part on the sheet some steps later.',
      };
    }
    return {
      says: null,
      made: { count: words.length },
      blocks: [
        {
          id: 'divide',
          title: 'Divide each word and mark its vowels',
          layout: 'table',
          note: `Find the vowel sounds, cut between the syllables, mark each vowel long or short, read the word. Weak vowels, vowels with r and y as long e have no mark. Dictionaries differ about some cuts: take any that helps to read the word.${
            words.length < count ? ` The group can read only ${words.length} such words yet.` : ''
          }`,
          columns: [
            { head: 'Word', shows: 'both' },
            { head: 'Divided and marked', shows: 'blank' },
            { head: 'Syllables', shows: 'key' },
          ],
          rows: words.map(({ word, reading }) => [
            word,
            markWord(word, reading)
              .map(({ text }) => text)
              .join(''),
            typesOf(reading.syllables),
          ]),
        },
      ],
    };
  },
};
