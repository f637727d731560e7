import { openWordBank, type WordBank } from '../../lesson/index.ts';
import { browser } from '../browser.ts';
import { loadOnce } from './load-once.ts';

/** Loads the words for lessons from the package, once, when the first lesson is made. */
export const loadWordBank = loadOnce<WordBank>(async () => {
  const answer = await fetch(browser.runtime.getURL('data/lesson-words.tsv'));
  return openWordBank(await answer.text());
});
