import naughtyWords from 'naughty-words/en.json' with { type: 'json' };
import profaneWords from 'profane-words';
import { readWordList } from './read-word-list.ts';

/**
 * Returns coarse words and insults, in lower case, from two lists of the registry. The lists are used only while data
 * is made and are never shipped. They contain many harmless words too, so a list made by hand may keep some of these.
 */
export function readUnfitWords(): ReadonlySet<string> {
  const listed = [...naughtyWords, ...profaneWords];
  return new Set([...listed.map((word) => word.toLowerCase()), ...readWordList('unfit-words.txt')]);
}
