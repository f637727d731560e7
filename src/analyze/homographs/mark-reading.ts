import type { WordKey } from '../types.ts';
import { chooseReading, SURE } from './choose-reading.ts';
import { isHomograph } from './is-homograph.ts';
import { readContext } from './read-context.ts';
import { keyOfReading } from './word-key.ts';

/**
 * Margin for a word without other words around it (in a list or heading). Such a word gets a reading only if its other
 * reading is rare. For example, "house" gets a reading and "read" does not.
 */
const SURE_ALONE = 3;

/**
 * Returns the key of a word with its reading, where the place makes the reading clear: `read#1` in `she read the note`.
 * A word keeps its key if it is no homograph or may be read either way there.
 */
export function markReading(text: string, start: number, end: number, key: WordKey): WordKey {
  if (!isHomograph(key)) return key;
  const { before, after } = readContext(text, start, end);
  const choice = chooseReading(text.slice(start, end), before, after);
  if (!choice || choice.margin < SURE) return key;
  const isSure = choice.margin >= SURE_ALONE || hasWord(before) || hasWord(after);
  return isSure ? keyOfReading(key, choice.reading) : key;
}

function hasWord(pieces: readonly string[]): boolean {
  return pieces.some((piece) => /\p{L}/u.test(piece));
}
