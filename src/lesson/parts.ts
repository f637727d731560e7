import type { PartMaker } from './lesson-part.ts';
import { review } from './review/review.ts';
import { wordBuilding } from './word-building/word-building.ts';

/** The parts of a lesson sheet, in the order of a lesson. */
export const parts: readonly PartMaker[] = [review, wordBuilding];
