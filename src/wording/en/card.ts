import { names } from '../names.ts';

/** The texts of the card beside a word of a page. */
export const card = {
  hear: 'hear it',
  close: 'close',
  stillNeeded: names.missingPatterns.en,
  nowTaught: 'Marked as taught: {pattern}.',
  notTaught: 'Not marked as taught: {pattern}.',
  undone: 'Undone.',
  teach: names.markAsTaught.en,
  taughtAt: 'Step {step} of your sequence teaches it.',
  learntBySight: 'Irregular spelling: teach it as a by-sight word.',
  noStep: 'Not in your sequence.',
  countsAs: names.countsAs.en,
  wordCounts: '{word} counts as: {as}.',
  asJudged: 'as judged by its patterns',
  bySight: names.bySightWord.en,
  name: 'name',
  skip: names.ignored.en,
  swaps: names.replacementWords.en,
  failed: 'That did not work. Try again.',
  cannotSpeak: 'This browser cannot read words aloud.',
  noVoice: 'No English voice is installed on this computer. Add one in its speech settings.',
  covered: 'Something on this page lies over this card, so it changes nothing. Use the panel instead.',
  moved: 'The card has just opened or moved. Press again.',
  onlyPanel: 'On this page the card changes nothing. Use the panel instead.',
  nothingKnown: 'Wordreach could not look up this word. Try again.',
} as const;
