import type { Reading, Unit, WordAnalysis } from '../types.ts';

/** Marks that show how a letter is pronounced and that English writers often leave out: é, è, ê, ë, ï, ö, ç. */
const LEFT_OUT = /[\u0300\u0301\u0302\u0308\u0327]/g;
const ANY_MARK = /\p{M}/gu;
const ANY_MARK_ONCE = /\p{M}/u;

/**
 * Returns a word without the marks on its letters: naive for naïve, pinata for piñata. Returns the word unchanged where
 * other letters than a to z remain.
 */
export function foldAccents(word: string): string {
  const plain = word.normalize('NFD').replace(ANY_MARK, '');
  return /^[a-z']+$/.test(plain) && plain.length === word.length ? plain : word;
}

/** Whether a mark makes a different letter: piñata; not café. */
export function hasOtherLetters(word: string): boolean {
  return ANY_MARK_ONCE.test(word.normalize('NFD').replace(LEFT_OUT, ''));
}

/**
 * Returns the analysis of a word with marks, made from the analysis of its plain form. The source stays the same for
 * naïve, café and coöperate. The source is only a guess in two cases: a mark makes a different letter (the ñ of
 * piñata), or é ends the word and the plain form has another ending (résumé is not resume; not café).
 */
export function unfoldAnalysis(word: string, plain: WordAnalysis): WordAnalysis {
  const isOther = hasOtherLetters(word);
  const readings = plain.readings.map((reading): Reading => {
    const isGuess =
      reading.source !== 'none' &&
      (isOther || (/ée?s?$/.test(word) && !/EY( Z)?$/.test(reading.pronunciation)));
    let at = 0;
    const syllables = reading.syllables.map(({ text, type }) => {
      at += text.length;
      return { text: word.slice(at - text.length, at), type };
    });
    return {
      ...reading,
      units: markUnits(word, reading.units),
      syllables,
      source: isGuess ? 'guess' : reading.source,
    };
  });
  return { ...plain, word, readings };
}

/**
 * Returns the units with the marks of the word. The units stay plain beside a_e, because its letters do not follow each
 * other (crème).
 */
function markUnits(word: string, units: readonly Unit[]): readonly Unit[] {
  if (units.reduce((length, { letters }) => length + letters.length, 0) !== word.length) return units;
  if (units.some(({ letters }) => letters.includes('_'))) return units;
  let at = 0;
  return units.map((unit) => {
    at += unit.letters.length;
    return { ...unit, letters: word.slice(at - unit.letters.length, at) };
  });
}
