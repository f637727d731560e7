import { rememberFor } from '../analyze/index.ts';
import type { PatternId, Unit } from '../analyze/types.ts';
import { isLate } from './fit-words.ts';
import type { KnownWord, KnownWords } from './known-words.ts';
import { isPlainBase } from './plain-words.ts';

/**
 * Returns the words that show a pattern to a group. The group decodes them with the pattern in their usual reading. The
 * commonest come first. A word known by sight shows no pattern, and neither does a word with two readings (lead).
 */
export function findExamples(known: KnownWords, id: PatternId): readonly KnownWord[] {
  return wordsByPattern(known).get(id) ?? [];
}

/** Returns the units of a word that belong to no prefix or suffix. */
export function ownUnits({ reading }: KnownWord): readonly Unit[] {
  return reading.units.filter(({ affix }) => affix === undefined);
}

/** A vowel. Before r it is pronounced in several ways: the a of marry, the o of sorry. */
const VOWEL = /^[AEIOU]/;

/**
 * Returns the examples that show a spelling best, shortest first. These are base words that children know, in which the
 * letters have only this sound (not the u of usual) and a vowel is not before r. If there are none, returns any base
 * word that has the letters once.
 */
export function plainExamples(
  examples: readonly KnownWord[],
  letters: string,
  sound: string,
): { readonly words: readonly KnownWord[]; readonly plain: boolean } {
  const fit = examples
    .filter((each) => {
      const { units, affixes } = each.reading;
      if (affixes.length > 0) return false;
      const at = units.findIndex((unit) => unit.letters === letters && unit.sound === sound);
      const before = units[at + 1]?.sound ?? '';
      return (
        at !== -1 &&
        units.every((unit) => unit.letters !== letters || unit.sound === sound) &&
        !(VOWEL.test(sound) && before.startsWith('R'))
      );
    })
    .toSorted((a, b) => a.reading.syllables.length - b.reading.syllables.length || a.rank - b.rank);
  const plain = fit.filter(({ word, rank }) => isPlainBase(word, rank) && !isLate(word));
  return plain.length > 0 ? { words: plain, plain: true } : { words: fit, plain: false };
}

/** The words of `known` by the patterns that their units spell, commonest first. Affixes do not count as units here. */
const wordsByPattern = rememberFor(sortByPattern);

function sortByPattern(known: KnownWords): Map<PatternId, KnownWord[]> {
  const index = new Map<PatternId, KnownWord[]>();
  for (const word of known.words) {
    if (word.homograph || word.standing === 'by-sight' || word.reading.source === 'guess') continue;
    for (const { pattern, affix } of word.reading.units) {
      if (affix !== undefined) continue;
      const words = index.get(pattern);
      if (!words) index.set(pattern, [word]);
      else if (words.at(-1) !== word) words.push(word);
    }
  }
  return index;
}
