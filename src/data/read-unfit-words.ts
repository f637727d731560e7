import naughtyWords from 'naughty-words/en.json' with { type: 'json' };
import profaneWords from 'profane-words';
import { readWordList } from './read-word-list.ts';

/**
 * Coarse words and insults, in lower case, of two lists from the registry. They are looked up while data is made and
 * shipped nowhere; they have many a harmless word too, so a list made by hand may keep one.
 */
export function readUnfitWords(): ReadonlySet<string> {
  const listed = [...naughtyWords, ...profaneWords];
  return new Set([...listed.map((word) => word.toLowerCase()), ...readWordList('unfit-words.txt')]);
}
