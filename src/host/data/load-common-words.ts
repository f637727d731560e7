import { browser } from '../browser.ts';
import { loadOnce } from './load-once.ts';

/** The 1,000 commonest words fit for a primary class, commonest first, from the package. */
export const loadCommonWords = loadOnce<readonly string[]>(async () => {
  const answer = await fetch(browser.runtime.getURL('data/common-words.json'));
  return answer.json();
});
