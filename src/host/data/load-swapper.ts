import { createSwapper, openSwaps, type Swapper, type SwapTable } from '../../swap/index.ts';
import { browser } from '../browser.ts';

let table: Promise<SwapTable> | undefined;
let swapper: Promise<Swapper> | undefined;

/** The table of swaps in the package, which also knows the parts of speech; loaded once, when it is first asked for. */
export function loadSwapTable(): Promise<SwapTable> {
  table ??= fetch(browser.runtime.getURL('data/swaps.bin'))
    .then((answer) => answer.arrayBuffer())
    .then((bytes) => openSwaps(new Uint8Array(bytes)));
  table.catch(() => {
    table = undefined;
    swapper = undefined;
  });
  return table;
}

/** The finder of swaps over that table. */
export function loadSwapper(): Promise<Swapper> {
  swapper ??= loadSwapTable().then(createSwapper);
  return swapper;
}
