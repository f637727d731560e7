import { countVowels } from '../../src/analyze/alignment/sounds.ts';
import { placeSpellings } from '../../src/analyze/build/place-spellings.ts';
import type { Reading } from '../../src/analyze/types.ts';
import type { Breach, Law } from './law.ts';
import { lessonWords, shortenedWords } from './lesson-words.ts';

const read: readonly { word: string; reading: Reading }[] = [...lessonWords, ...shortenedWords].flatMap(
  ({ word, readings }) => readings.map((reading) => ({ word, reading })),
);

/** A word has as many syllables as vowel sounds that have a letter or follow an apostrophe. */
export function syllablesAreVowelSounds(): Law {
  const breaches = read.flatMap(({ word, reading: { syllables, units } }): Breach[] => {
    const vowels = units.reduce((sum, { sound }) => sum + countVowels(sound), 0);
    if (vowels === syllables.length) return [];
    return [{ key: word, found: `${show(syllables)}, ${vowels} vowel sounds` }];
  });
  return { id: 'syllables', says: 'syllables are as many as vowel sounds', looked: read.length, breaches };
}

/** The syllables contain all letters of the word, and exactly one vowel starts in each syllable. */
export function everySyllableHasOneVowel(): Law {
  const breaches = read.flatMap(({ word, reading: { syllables, units } }): Breach[] => {
    const starts = placeSpellings(word, units);
    const text = syllables.map((one) => one.text).join('');
    if (!starts || text !== word) return [{ key: word, found: show(syllables) }];
    const vowels = units.flatMap((unit, i) => vowelPlaces(unit, starts[i]!));
    let at = 0;
    const wrong = syllables.some((syllable) => {
      const end = at + syllable.text.length;
      const inside = vowels.filter((place) => place >= at && place < end);
      at = end;
      return inside.length !== 1;
    });
    return wrong ? [{ key: word, found: show(syllables) }] : [];
  });
  return { id: 'one-vowel', says: 'every syllable has one vowel', looked: read.length, breaches };
}

/**
 * Returns the positions of the letters of a unit that spell its vowels. The unit -able has two positions; in a unit
 * without vowel letters (n't), the first letter counts.
 */
function vowelPlaces({ letters, sound }: { letters: string; sound: string }, start: number): number[] {
  const placesOf = (like: RegExp): number[] => [...letters.matchAll(like)].map(({ index }) => start + index);
  const count = countVowels(sound);
  const groups = placesOf(/[aeiouy]+/g);
  if (count > 0 && groups.length === 0) return [start];
  return (groups.length < count ? placesOf(/[aeiouy]/g) : groups).slice(0, count);
}

/** The letters that a syllable of each type must have. */
const LETTERS = {
  closed: /[aeiouy][^aeiou]*[^aeiouy]|[aeiouy][^aeiouy]+e?|x/,
  open: /[aeiouy]h?('|$)/,
  vce: /[aeiouy](r|[^aeiou]{1,2}|gu|qu)?(e|ed|$)/,
  team: /[aeiou][aeiouwy]|gh|ye|uy|ay|ey/,
  'r-controlled': /[aeiouy]+r|re/,
  'consonant-le': /le$/,
  other: /./,
} as const;

/**
 * The type of a syllable agrees with its letters: an r-controlled syllable has an r, and a closed syllable does not end
 * in a vowel.
 */
export function typesAgreeWithLetters(): Law {
  const breaches = read.flatMap(({ word, reading: { syllables } }): Breach[] => {
    const wrong = syllables.filter(({ text, type }) => {
      const base = /open|le$/.test(type)
        ? [text, text.replace(/[sd]$/, ''), text.replace(/(?<=[^e])e[sd]$/, 'e')]
        : [text];
      return !base.some((one) => LETTERS[type].test(one));
    });
    return wrong.length > 0
      ? [{ key: word, found: wrong.map((one) => `${one.text}/${one.type}`).join(' ') }]
      : [];
  });
  return {
    id: 'types',
    says: 'the type of a syllable agrees with its letters',
    looked: read.length,
    breaches,
  };
}

function show(syllables: Reading['syllables']): string {
  return syllables.map(({ text }) => text).join('.');
}
