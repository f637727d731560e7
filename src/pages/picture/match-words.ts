import { diffArrays } from 'diff';

/** A word of the written text; offsets are UTF-16 units. */
export interface WrittenWord {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** Returns the words of a text, separated by whitespace. */
export function listWritten(text: string): WrittenWord[] {
  return Array.from(text.matchAll(/\S+/g), ({ index, 0: word }) => ({
    start: index,
    end: index + word.length,
    text: word,
  }));
}

/**
 * Returns for each word of the picture the index of its word in `written`, or null if the teacher removed the word.
 * Corrected words are matched by their position between other words. The two parts of a word divided at the end of a
 * line (har- bour) both get the index of the joined word.
 */
export function matchWords(read: readonly string[], written: readonly string[]): (number | null)[] {
  const matched: (number | null)[] = read.map(() => null);
  let from = 0;
  let to = 0;
  const changes = diffArrays([...read], [...written]);
  changes.forEach(({ value, added, removed }, n) => {
    if (added) {
      if (!changes[n - 1]?.removed) to += value.length;
      return;
    }
    if (!removed) {
      for (let k = 0; k < value.length; k++) matched[from++] = to++;
      return;
    }
    const next = changes[n + 1];
    const instead = next?.added ? next.value : [];
    matchChanged(value, instead).forEach((place, k) => {
      matched[from + k] = place === null ? null : to + place;
    });
    from += value.length;
    to += instead.length;
  });
  return matched;
}

/** Matches words with their replacements: either one by one when the numbers are equal, or as pieces that make one word. */
function matchChanged(read: readonly string[], instead: readonly string[]): (number | null)[] {
  if (read.length === instead.length) return read.map((_, n) => n);
  const places: (number | null)[] = [];
  let at = 0;
  let rest = lettersOf(instead[0] ?? '');
  for (const word of read) {
    const letters = lettersOf(word);
    if (letters !== '' && rest.startsWith(letters)) {
      places.push(at);
      rest = rest.slice(letters.length);
      if (rest === '') rest = lettersOf(instead[++at] ?? '');
    } else places.push(null);
  }
  return places;
}

function lettersOf(word: string): string {
  return word.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '');
}
