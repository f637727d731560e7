import { rIsHeardBeforeVowels } from './british-law.ts';
import { cardsSayTheWord } from './card-law.ts';
import {
  endingsAreInTheirKeyWords,
  examplesNeedTheirRow,
  finerRowsAddNothing,
  keyWordsSayTheirSound,
  rowsAreNeeded,
} from './catalogue-laws.ts';
import { everythingTaughtReads } from './irregular-law.ts';
import { derivationsAreJoined, inflectionsAreJoined, partsAndJoints } from './making-laws.ts';
import { storedGroupsReadAsBefore } from './stored-law.ts';
import { everySyllableHasOneVowel, syllablesAreVowelSounds, typesAgreeWithLetters } from './syllable-laws.ts';
import { partsBySightRead, teachingMoreTakesNothingAway } from './teaching-laws.ts';

/** The laws of the engine over the whole catalogue or all lesson words. Each law is a function that finds its breaches. */
export const allLaws = [
  examplesNeedTheirRow,
  rowsAreNeeded,
  keyWordsSayTheirSound,
  endingsAreInTheirKeyWords,
  cardsSayTheWord,
  finerRowsAddNothing,
  storedGroupsReadAsBefore,
  everythingTaughtReads,
  partsAndJoints,
  partsBySightRead,
  teachingMoreTakesNothingAway,
  inflectionsAreJoined,
  derivationsAreJoined,
  syllablesAreVowelSounds,
  everySyllableHasOneVowel,
  typesAgreeWithLetters,
];

/**
 * The laws that apply in British English too. The other laws need lessons or stored files, which are American, or do
 * not concern sounds.
 */
export const britishLaws = [
  rIsHeardBeforeVowels,
  ...allLaws.filter(
    (law) =>
      ![cardsSayTheWord, storedGroupsReadAsBefore, inflectionsAreJoined, derivationsAreJoined].includes(law),
  ),
];
