import { createSwapper, openSwaps, type Swapper } from '../../swap/index.ts';
import { browser } from '../browser.ts';
import { loadOnce } from './load-once.ts';

/** The finder of swaps over its table in the package; loaded once, when it is first asked for. */
export const loadSwapper = loadOnce<Swapper>(async () => {
  const answer = await fetch(browser.runtime.getURL('data/swaps.bin'));
  return createSwapper(openSwaps(new Uint8Array(await answer.arrayBuffer())));
});
