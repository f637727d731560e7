export { createSwapper, type Swapper } from './create-swapper.ts';
export { openSwaps, type SwapTable } from './open-swaps.ts';
export { reachOf } from './reach-of.ts';
