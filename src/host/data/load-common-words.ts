import { browser } from '../browser.ts';
import { loadOnce } from './load-once.ts';

/** Loads the 1,000 commonest words fit for a primary class from the package, commonest first. */
export const loadCommonWords = loadOnce<readonly string[]>(async () => {
  const answer = await fetch(browser.runtime.getURL('data/common-words.json'));
  return answer.json();
});
