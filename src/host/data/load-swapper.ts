import {
  createSwapper,
  openSwaps,
  type PhraseLists,
  type Swapper,
  type SwapTable,
} from '../../swap/index.ts';
import { browser } from '../browser.ts';
import { loadOnce } from './load-once.ts';

/**
 * Loads the table of swaps in the package, which also knows the parts of speech. It is loaded once, at the first
 * request.
 */
export const loadSwapTable = loadOnce<SwapTable>(async () => {
  const answer = await fetch(browser.runtime.getURL('data/swaps.bin'));
  return openSwaps(new Uint8Array(await answer.arrayBuffer()));
});

/** Loads the finder of swaps over the table of swaps and the phrases that are said plainer. */
export const loadSwapper = loadOnce<Swapper>(async () => {
  const [table, phrases] = await Promise.all([loadSwapTable(), loadPhrases()]);
  return createSwapper(table, phrases);
});

/**
 * Reads the phrases from the package. They are no part of the code, because the background evaluates its code at every
 * start and keeps it in memory.
 */
async function loadPhrases(): Promise<PhraseLists> {
  const answer = await fetch(browser.runtime.getURL('data/phrase-swaps.json'));
  return answer.json();
}
