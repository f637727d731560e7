import { openWordBank, type WordBank } from '../../lesson/index.ts';
import { browser } from '../browser.ts';
import { loadOnce } from './load-once.ts';

/** The words lessons are made of, from the package; loaded once, when a lesson is first made. */
export const loadWordBank = loadOnce<WordBank>(async () => {
  const answer = await fetch(browser.runtime.getURL('data/lesson-words.tsv'));
  return openWordBank(await answer.text());
});
