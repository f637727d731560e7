import { readFrequency } from './read-frequency.ts';
import { readWordList } from './read-word-list.ts';

const COUNT = 1000;

/**
 * Returns the 1,000 words that are commonest in film subtitles (SUBTLEX) and fit for a primary class, commonest first.
 * They are in lower case and have only letters. The words of `source/not-for-school.txt` are left out. I keeps its
 * capital.
 */
export function listCommonWords(): readonly string[] {
  const leftOut = readWordList('not-for-school.txt');
  return [...readFrequency().keys()]
    .filter((word) => /^[a-z]+$/.test(word) && !leftOut.has(word))
    .slice(0, COUNT)
    .map((word) => (word === 'i' ? 'I' : word));
}
