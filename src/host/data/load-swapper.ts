import { createSwapper, openSwaps, type Swapper } from '../../swap/index.ts';
import { browser } from '../browser.ts';

let swapper: Promise<Swapper> | undefined;

/** The finder of swaps over its table in the package; loaded once, when it is first asked for. */
export function loadSwapper(): Promise<Swapper> {
  swapper ??= fetch(browser.runtime.getURL('data/swaps.bin'))
    .then((answer) => answer.arrayBuffer())
    .then((bytes) => createSwapper(openSwaps(new Uint8Array(bytes))));
  swapper.catch(() => {
    swapper = undefined;
  });
  return swapper;
}
