import { dictation } from './dictation/dictation.ts';
import { homophones } from './homophones/homophones.ts';
import type { PartMaker } from './lesson-part.ts';
import { review } from './review/review.ts';
import { smoothReading } from './smooth-reading/smooth-reading.ts';
import { vocabulary } from './vocabulary/vocabulary.ts';
import { wordBuilding } from './word-building/word-building.ts';
import { wordLists } from './word-lists/word-lists.ts';

/** The parts of a lesson sheet, in the order of a lesson. */
export const parts: readonly PartMaker[] = [
  review,
  wordBuilding,
  wordLists,
  vocabulary,
  dictation,
  homophones,
  smoothReading,
];
