import { diffArrays } from 'diff';

/** A word of the written text; offsets are UTF-16 units. */
export interface WrittenWord {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** The words between the gaps of a text. */
export function listWritten(text: string): WrittenWord[] {
  return Array.from(text.matchAll(/\S+/g), ({ index, 0: word }) => ({
    start: index,
    end: index + word.length,
    text: word,
  }));
}

/**
 * Which written word each word of the picture is now, by its place in `written`; null where the teacher took it out. Words the teacher corrected
 * are matched by their place between others, and two that were one at the end of a line (har- bour) are both the one.
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

/** Words in place of others: as many for as many, or pieces that make one. */
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
