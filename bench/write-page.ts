import { readFrequency } from '../src/data/read-frequency.ts';

/** The number of most common words from which the words of a page are drawn. */
const VOCABULARY = 40_000;

/**
 * Returns a page with the given number of words in paragraphs. The page is the same each time. Words are as common as
 * in English: the n-th most common word occurs 1/n as often as the most common word (Zipf's law). Every fifth paragraph
 * has a link and a word set in italics. Every tenth paragraph is a heading.
 */
export function writePage(words: number): string {
  const vocabulary = [...readFrequency().keys()]
    .slice(0, VOCABULARY)
    .filter((word) => /^[a-z']+$/.test(word));
  let state = 20_261_125;
  const random = (): number => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
  // The n-th root law: if a rank is drawn as size^x, with x evenly distributed, its frequency falls off as 1/n.
  const word = (): string => vocabulary[Math.floor(vocabulary.length ** random()) - 1]!;
  const parts: string[] = [];
  for (let written = 0, n = 0; written < words; n++) {
    const isHeading = n % 10 === 0;
    const length = Math.min(words - written, isHeading ? 5 : 40 + Math.floor(random() * 60));
    const run = Array.from({ length }, (_, i) => {
      const isFirst = i % 12 === 0;
      const one = isFirst ? capitalise(word()) : word();
      if (n % 5 === 1 && i === 8) return `<a href="#">${one}</a>`;
      if (n % 5 === 1 && i === 20) return `<i>${one}</i>`;
      return i % 12 === 11 ? `${one}.` : i % 12 === 5 ? `${one},` : one;
    });
    written += length;
    parts.push(isHeading ? `<h2>${run.join(' ')}</h2>` : `<p>${run.join(' ')}.</p>`);
  }
  return `<!doctype html><html lang="en"><meta charset="utf-8"><title>Tarn Quay</title><body>${parts.join('\n')}`;
}

function capitalise(word: string): string {
  return word[0]!.toUpperCase() + word.slice(1);
}
