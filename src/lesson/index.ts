export { createKnownWords, type KnownWord, type KnownWords } from './known-words.ts';
export { findFocus, type LessonInput, type LessonText } from './lesson-input.ts';
export type { Column, LessonBlock, LessonPart, PartChoice, PartMaker } from './lesson-part.ts';
export {
  decide,
  inOrder,
  type LessonPlan,
  makePart,
  makeSheet,
  movePart,
  type PartName,
  type PartPlan,
  type PlannedPart,
  parsePlan,
  planOf,
  renew,
  startPlan,
} from './lesson-plan.ts';
export { parts } from './parts.ts';
export { createPicker, type Picker } from './picker.ts';
export { applyPreset, type LessonPreset, onePage, parsePresets, presetOf } from './presets.ts';
export { wordsCorrectAMinute } from './read-it/read-it.ts';
export { rememberAnalyses } from './remember-analyses.ts';
export { addSheet, type EarlierSheet, parseSheets } from './spaced-review/earlier-sheets.ts';
export { wordsOnSheet } from './spaced-review/words-on-sheet.ts';
export { type BankWord, openWordBank, type WordBank } from './word-bank.ts';
