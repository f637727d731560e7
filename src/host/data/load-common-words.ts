import { browser } from '../browser.ts';

let words: Promise<readonly string[]> | undefined;

/** The 1,000 commonest words fit for a primary class, commonest first, from the package. */
export function loadCommonWords(): Promise<readonly string[]> {
  words ??= fetch(browser.runtime.getURL('data/common-words.json')).then((answer) => answer.json());
  words.catch(() => {
    words = undefined;
  });
  return words;
}
