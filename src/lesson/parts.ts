import type { PartMaker } from './lesson-part.ts';

/** The parts of a lesson sheet, in the order of a lesson. */
export const parts: readonly PartMaker[] = [];
