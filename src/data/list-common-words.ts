import { readFrequency } from './read-frequency.ts';
import { readWordList } from './read-word-list.ts';

const COUNT = 1000;

/**
 * The 1,000 words that are commonest in film subtitles (SUBTLEX) and fit for a primary class, commonest first:
 * lower case, letters only, without the words of `source/not-for-school.txt`. I is written as it is read.
 */
export function listCommonWords(): readonly string[] {
  const leftOut = readWordList('not-for-school.txt');
  return [...readFrequency().keys()]
    .filter((word) => /^[a-z]+$/.test(word) && !leftOut.has(word))
    .slice(0, COUNT)
    .map((word) => (word === 'i' ? 'I' : word));
}
