export {
  AMERICAN,
  accentOf,
  defaultAccent,
  type SoundStyle,
  type Speech,
  soundStyleOf,
  soundsIn,
  speechOf,
} from './accent/speech.ts';
export { catalogue, coarseRows } from './catalogue/catalogue.ts';
export { patternNames } from './catalogue/names.ts';
export { type Climb, climbText } from './climb/climb-text.ts';
export { type Climber, createClimber, type WordClimb } from './climb/create-climber.ts';
export { READING_LEVELS } from './climb/reading-levels.ts';
export { rememberWords, type WordWeigher } from './climb/remember-words.ts';
export { describeError } from './describe-error.ts';
export { type Guesser, openGuesser } from './guess/open-guesser.ts';
export { cutContext, type SpanInContext } from './homographs/cut-context.ts';
export { isHomograph } from './homographs/is-homograph.ts';
export { markReading } from './homographs/mark-reading.ts';
export { shownOfKey, splitKey } from './homographs/word-key.ts';
export { type Lexicon, openLexicon } from './lexicon/open-lexicon.ts';
export { findRule, type Rule } from './rule.ts';
export * from './sequence-import/index.ts';
export {
  createWordNumbers,
  type NumberedWords,
  numberWords,
  type WordNumbers,
} from './shelf/number-words.ts';
export { type Fit, rankTexts, stepsOfWords, type WordSteps } from './shelf/rank-texts.ts';
export { type CompiledGroup, compileGroup } from './standing/compile-group.ts';
export { neededOf } from './standing/fine-needs.ts';
export { groupAhead, NEXT_STEPS } from './standing/group-ahead.ts';
export { GroupError } from './standing/group-error.ts';
export { createJudge, type Judge, type WordAnalyzer } from './standing/judge.ts';
export { parseGroup } from './standing/parse-group.ts';
export { parseSequence } from './standing/parse-sequence.ts';
export { hasBit } from './standing/pattern-bits.ts';
export { isBlend } from './standing/pattern-roles.ts';
export { remember, rememberFor } from './standing/remember.ts';
export { rememberWeighed } from './standing/remember-weighed.ts';
export { unknownName } from './standing/unknown-name.ts';
export { createReporter, tallyText, vet, type WordCounts } from './standing/vet.ts';
export { standsBeforeName } from './text/abbreviations.ts';
export { cutText } from './text/cut-text.ts';
export { findSentences } from './text/find-sentences.ts';
export { isGrammarWord } from './text/is-grammar-word.ts';
export { dependsOnText, nameOf, settleCapital, settleCounts } from './text/settle-capitals.ts';
export { tokenize } from './text/tokenize.ts';
export { type Analyzer, createAnalyzer } from './word/create-analyzer.ts';
