export { createSwapper, type Swapper } from './create-swapper.ts';
export { cutWords, type Piece } from './cut-words.ts';
export { openSwaps, type SwapTable } from './open-swaps.ts';
export type { PhraseLists } from './phrase-swaps.ts';
export { reachFor } from './reach-for.ts';
export { weighReadings } from './weigh-readings.ts';
