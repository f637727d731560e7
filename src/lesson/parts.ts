import { bySight } from './by-sight/by-sight.ts';
import { cards } from './cards/cards.ts';
import { dictation } from './dictation/dictation.ts';
import { homeSheet } from './home-sheet/home-sheet.ts';
import { homophones } from './homophones/homophones.ts';
import type { PartMaker } from './lesson-part.ts';
import { newPattern } from './new-pattern/new-pattern.ts';
import { readIt } from './read-it/read-it.ts';
import { review } from './review/review.ts';
import { smoothReading } from './smooth-reading/smooth-reading.ts';
import { spacedReview } from './spaced-review/spaced-review.ts';
import { stepCheck } from './step-check/step-check.ts';
import { syllableDivision } from './syllable-division/syllable-division.ts';
import { vocabulary } from './vocabulary/vocabulary.ts';
import { wordBuilding } from './word-building/word-building.ts';
import { wordLists } from './word-lists/word-lists.ts';
import { wordSort } from './word-sort/word-sort.ts';

/** The parts of a lesson sheet, in the order of a lesson. */
export const parts: readonly PartMaker[] = [
  review,
  spacedReview,
  newPattern,
  wordBuilding,
  wordLists,
  wordSort,
  syllableDivision,
  bySight,
  vocabulary,
  dictation,
  homophones,
  smoothReading,
  readIt,
  stepCheck,
  cards,
  homeSheet,
];
