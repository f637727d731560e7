import type { WordKey } from '../types.ts';
import { chooseReading, SURE } from './choose-reading.ts';
import { isHomograph } from './is-homograph.ts';
import { readContext } from './read-context.ts';
import { keyOfReading } from './word-key.ts';

/** A word by itself (a list, a heading) is settled only where one reading is rare: house, not read. */
const SURE_ALONE = 3;

/**
 * The key of a word with the reading it has in its place, where that is plain: `read#1` in `she read the note`;
 * a word that is no homograph, or may be read either way there, keeps its key.
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
