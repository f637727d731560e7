import { markedText } from '../../marks/mark-word.ts';
import { inVariety, isForeign } from '../../variety/index.ts';
import { isForClass } from '../fit-words.ts';
import type { LessonInput } from '../lesson-input.ts';
import type { LessonBlock, PartMaker } from '../lesson-part.ts';
import { passageSentences } from '../passage-sentences.ts';
import type { BankWord } from '../word-bank.ts';
import { type Candidate, findCandidates, isDoing, isOfDoing } from './find-candidates.ts';
import { showParts } from './show-parts.ts';

/** The number of words offered to the teacher. */
const OFFERED = 6;
/** The number of best words from which one is picked, in a passage and in the bank. So a new sheet has another word. */
const DRAWN_FROM = { passage: 6, bank: 24 };
const SENTENCES = 2;
const FAMILY = 4;

/** One word to talk about: its meaning, its parts, its place in the passage. */
export const vocabulary: PartMaker = {
  id: 'vocabulary',
  title: 'Vocabulary word',
  use: 'Talk about one word: its parts, its meaning, a sentence.',
  choices: (input) => [
    {
      id: 'word',
      label: 'Word',
      options: [
        { value: '', label: 'choose for me' },
        ...findCandidates(input)
          .slice(0, OFFERED)
          .map(({ word: { word }, readable }) => ({
            value: word,
            label: readable ? word : `${word} (not yet readable)`,
          })),
      ],
      usual: '',
    },
  ],
  make(input, chosen, picker) {
    const candidates = findCandidates(input);
    const readable = candidates
      .filter((each) => each.readable)
      .slice(0, input.passage ? DRAWN_FROM.passage : DRAWN_FROM.bank);
    const candidate =
      candidates.find(({ word }) => word.word === chosen('word')) ?? picker.pickEarly(readable, 1)[0];
    if (candidate) return { blocks: makeBlocks(input, candidate), says: null };
    return {
      blocks: [],
      says: input.passage
        ? 'No readable word of the passage is worth a talk. Choose another passage, or choose a word.'
        : 'The group can read too few words yet. Choose a passage, or a later step.',
    };
  },
};

function makeBlocks(input: LessonInput, candidate: Candidate): LessonBlock[] {
  const { word, reading, readable, forms } = candidate;
  const sentences = passageSentences(input.passage)
    .filter((sentence) => has(sentence, forms))
    .toSorted((a, b) => Number(input.known.reads(b)) - Number(input.known.reads(a)))
    .slice(0, SENTENCES);
  const forPupils = sentences.filter(input.known.reads);
  const forAdult = sentences.filter((sentence) => !input.known.reads(sentence));
  const family = familyOf(word, input);
  const meaning = inVariety(word.meaning, input.known.accent);
  const about: LessonBlock = {
    id: 'word',
    title: 'The word',
    layout: 'table',
    note: [
      readable ? '' : 'The pupils cannot read this word yet. Say it and talk about it.',
      sentences.length === 0 ? 'Say your own sentence with the word.' : '',
      'Ask for other sentences with the word.',
    ]
      .filter((text) => text !== '')
      .join(' '),
    columns: [
      { head: 'Word', shows: readable ? 'both' : 'key' },
      { head: 'Meaning', shows: input.known.reads(meaning) ? 'both' : 'key' },
      { head: 'Marked', shows: 'key' },
      { head: 'Built from', shows: 'key' },
      { head: 'Same family', shows: 'key' },
    ],
    rows: [[word.word, meaning, markedText(word.word, reading), showParts(reading), family.join(', ')]],
  };
  return [
    about,
    ...lines('sentences', 'In the passage', forPupils, 'both'),
    ...lines('to-read-aloud', 'In the passage, to read aloud', forAdult, 'key'),
  ];
}

function lines(
  id: string,
  title: string,
  sentences: readonly string[],
  shows: 'both' | 'key',
): LessonBlock[] {
  if (sentences.length === 0) return [];
  return [
    { id, title, layout: 'lines', columns: [{ head: '', shows }], rows: sentences.map((each) => [each]) },
  ];
}

function has(sentence: string, forms: readonly string[]): boolean {
  const words = new Set(sentence.toLowerCase().match(/\p{L}+/gu));
  return forms.some((form) => words.has(form));
}

/**
 * Returns words built from a word that children know, commonest first: sail, sails, sailor. For a word that names a
 * thing, the forms of an action are left out (whip, whipped).
 */
function familyOf({ word, meaning }: BankWord, { known, bank }: LessonInput): string[] {
  const isFit = (form: string): boolean =>
    form !== word &&
    !isForeign(form, known.accent) &&
    !/i[sz](?:e|ed|es|er|ing|ation)$/.test(form) &&
    isForClass(form, word, bank) &&
    (isOfDoing(meaning) || !isDoing(form));
  return known.analyses
    .filter((analysis) => analysis.readings[0]!.base === word && isFit(analysis.word))
    .slice(0, FAMILY)
    .map((analysis) => analysis.word);
}
