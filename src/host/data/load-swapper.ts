import { createSwapper, openSwaps, type Swapper, type SwapTable } from '../../swap/index.ts';
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

/** Loads the finder of swaps over the table of swaps. */
export const loadSwapper = loadOnce<Swapper>(async () => createSwapper(await loadSwapTable()));
