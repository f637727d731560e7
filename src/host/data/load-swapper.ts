import { createSwapper, openSwaps, type Swapper, type SwapTable } from '../../swap/index.ts';
import { browser } from '../browser.ts';
import { loadOnce } from './load-once.ts';

/** The table of swaps in the package, which also knows the parts of speech; loaded once, when it is first asked for. */
export const loadSwapTable = loadOnce<SwapTable>(async () => {
  const answer = await fetch(browser.runtime.getURL('data/swaps.bin'));
  return openSwaps(new Uint8Array(await answer.arrayBuffer()));
});

/** The finder of swaps over that table. */
export const loadSwapper = loadOnce<Swapper>(async () => createSwapper(await loadSwapTable()));
