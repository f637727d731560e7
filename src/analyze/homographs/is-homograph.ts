import listed from './homographs.json' with { type: 'json' };

/**
 * Words for which rules or weights choose a reading; a test holds the list to them. It is kept apart from the weights, so
 * that a web page can tell which words to ask about without having them.
 */
export const HOMOGRAPHS: readonly string[] = listed.words.split(' ');

/** With their -s forms. */
const known = new Set(HOMOGRAPHS.flatMap((word) => [word, `${word}s`]));

/** Whether a word may have a reading of its own in its place: read, Read, records; not red. Cheap, for every word of a text. */
export function isHomograph(word: string): boolean {
  return known.has(word) || (word < 'a' && known.has(word.toLowerCase()));
}
