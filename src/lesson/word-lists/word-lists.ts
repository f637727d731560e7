import { catalogue, isBlend, rememberFor } from '../../analyze/index.ts';
import type { PatternId } from '../../analyze/types.ts';
import { patternLabel } from '../../marks/pattern-label.ts';
import { isLate } from '../fit-words.ts';
import type { LessonInput } from '../lesson-input.ts';
import type { Column, LessonBlock, PartChoice, PartMaker } from '../lesson-part.ts';
import { numberChoice } from '../number-choice.ts';
import type { Picker } from '../picker.ts';
import { areTypesTaught, isOnSyllables } from '../syllable-division/choose-words.ts';
import { findChain, type StepKinds } from './find-chain.ts';
import { type ContrastKind, type Contrasts, findContrasts } from './find-contrasts.ts';
import { differInOneSound, isAffixUnit, isOneSound, isVowel, patternOf } from './list-units.ts';
import { type ListedWord, listWords } from './listed-words.ts';
import { makeNonsense } from './make-nonsense.ts';
import { createFindSteps, type FindSteps, type OneStep } from './one-unit-apart.ts';

/** The choice of all patterns of the step together. */
const ALL = 'all';
/** In a step with more patterns than this, or with blends only, the words come from all patterns. */
const FEW = 12;
/** The first choice of pattern has at least this many words. */
const ENOUGH = 6;
const PAIRS = 8;
/** Endings and long words are only searched among this many words. */
const COMMON = 5000;
const CHAINS = 2;
const SHORTEST_CHAIN = 4;
const FEWEST_NONSENSE = 4;

const BANDS = [
  { id: 'one', title: 'One syllable', holds: (syllables: number) => syllables === 1, share: 1 },
  { id: 'two', title: 'Two syllables', holds: (syllables: number) => syllables === 2, share: 0.75 },
  { id: 'more', title: 'Three syllables and more', holds: (syllables: number) => syllables > 2, share: 0.5 },
];
const CHANGE: StepKinds = new Set(['change']);
const ANY: StepKinds = new Set(['change', 'add', 'drop']);
const FOR_PUPILS: readonly Column[] = [{ head: '', shows: 'both' }];

/** Words with a pattern: sorted by length, in pairs one unit apart, in chains, and made up. */
export const wordLists: PartMaker = {
  id: 'word-lists',
  title: 'Word lists',
  use: 'Pupils read words, pairs, chains and made-up words with the pattern.',

  choices(input) {
    return [...patternChoice(input), ...COUNTS];
  },

  make(input, chosen, picker) {
    const focus = input.focus;
    if (focus.length === 0) {
      return {
        blocks: [],
        says: 'Nothing has been taught yet. Choose the group’s step to list its words here.',
      };
    }
    const pattern = chosen('pattern');
    const patterns = new Set(pattern === ALL || pattern === '' ? focus : [pattern]);
    const label = patterns.size === 1 ? patternLabel([...patterns][0]!) : 'patterns of this step';
    const examples = examplesOf(input, patterns);
    if (examples.length === 0) {
      const next = focus.length > 1 ? 'choose another pattern of the step' : 'try again a step or two later';
      return { blocks: [], says: `No word for ${label} can be read yet without other patterns: ${next}.` };
    }
    if (chosen('kinds') === ONE_LIST) {
      const lists = listByLength(input, examples, label, Number(chosen('count')), picker);
      return { blocks: lists.filter(({ rows }) => rows.length > 0).slice(0, 1), says: null };
    }
    const findSteps = stepsAmong(input, examples);
    const nonsense = makeNonsense(input, patterns, Number(chosen('nonsense')), picker);
    const blocks = [
      ...listByLength(input, examples, label, Number(chosen('count')), picker),
      contrastBlock(findContrasts(examples, patterns, findSteps, PAIRS, picker), label),
      chainBlock(input, examples, findSteps, chosen, picker),
      block(
        'nonsense',
        `Made-up words: ${label}`,
        'words',
        nonsense.length < FEWEST_NONSENSE ? [] : nonsense.map((word) => [word]),
        NONSENSE_NOTE,
      ),
    ];
    const rowsOf = (id: string): LessonBlock['rows'] => blocks.find((block) => block.id === id)?.rows ?? [];
    const chains = rowsOf('chains').map(({ length }) => length);
    return {
      blocks: blocks.filter(({ rows }) => rows.length > 0),
      says: null,
      made: {
        count: rowsOf('words-one').length,
        'chain-length': chains.length === 0 ? 0 : Math.min(...chains),
        nonsense: rowsOf('nonsense').length,
      },
    };
  },
};

const NONSENSE_NOTE =
  'None of these is a word: only sounding out helps. Say so before, and take any reading the letters allow.';

/** Only the list of the shortest words. */
const ONE_LIST = 'list';

const COUNTS: readonly PartChoice[] = [
  {
    id: 'kinds',
    label: 'Kinds of lists',
    options: [
      { value: 'all', label: 'lists, pairs, chains' },
      { value: ONE_LIST, label: 'one list' },
    ],
    usual: 'all',
  },
  numberChoice('count', 'Words of one syllable', [8, 12, 16, 24], 12),
  {
    id: 'chain-step',
    label: 'Word chain',
    options: [
      { value: 'change', label: 'change one sound' },
      { value: 'any', label: 'change, add or remove one' },
    ],
    usual: 'change',
  },
  numberChoice('chain-length', 'Words in a chain', [5, 6, 7, 8, 9, 10, 11, 12], 6),
  numberChoice('nonsense', 'Made-up words', [0, 6, 10, 16, 24], 10),
];

function patternChoice(input: LessonInput): PartChoice[] {
  const { focus } = input;
  if (focus.length < 2) return [];
  const options = focus.map((id) => ({ value: id as string, label: patternLabel(id) }));
  const first = focus.find((id) => examplesOf(input, new Set([id])).length >= ENOUGH);
  return [
    {
      id: 'pattern',
      label: 'Pattern',
      options: [...options, { value: ALL, label: 'all of this step' }],
      usual: focus.length > FEW || areBlends(focus) ? ALL : (first ?? ALL),
    },
  ];
}

function examplesOf(input: LessonInput, patterns: ReadonlySet<PatternId>): ListedWord[] {
  return listWords(input).filter(
    (word) => word.requires.some((id) => patterns.has(id)) && !isSoundedInNext(word, patterns),
  );
}

/**
 * Whether the r of a weak ar or or begins the next syllable. Diary is therefore no example of the pattern in dollar and
 * doctor.
 */
function isSoundedInNext({ units }: ListedWord, patterns: ReadonlySet<PatternId>): boolean {
  return units.some(
    (unit, i) =>
      /^(?:ar|or)-weak:/.test(unit) && patterns.has(patternOf(unit)) && isVowel(units[i + 1] ?? ''),
  );
}

/** If children know this many of the words, the list has no other words (impound). */
const FEWEST_KNOWN = 3;

/** Returns lists with one word of each family, sorted by length. */
function listByLength(
  input: LessonInput,
  examples: readonly ListedWord[],
  label: string,
  count: number,
  picker: Picker,
): LessonBlock[] {
  const families = new Set<string>();
  const single = examples.filter(({ family }) => !families.has(family) && families.add(family));
  const early = single.filter(
    (each) =>
      !isLate(each.word) && !isLate(each.family) && (!isOnSyllables(input) || areTypesTaught(each, input)),
  );
  const from = early.length > 0 ? early : single;
  return BANDS.map(({ id, title, holds, share }) => {
    const fit = from.filter(({ syllables }) => holds(syllables));
    const known = fit.filter(({ plain }) => plain);
    const words = picker.pickEarly(known.length >= FEWEST_KNOWN ? known : fit, Math.ceil(count * share));
    words.sort((a, b) => a.units.length - b.units.length || a.word.length - b.word.length);
    return block(
      `words-${id}`,
      `${title}: ${label}`,
      'words',
      words.map(({ word }) => [word]),
    );
  });
}

/** The question about a pair, by the kind of contrast. */
const PAIR_NOTES: Readonly<Record<ContrastKind, string>> = {
  sound: 'Say both words. Which sound is not the same, and which letters spell it?',
  more: 'Say both words. Which sound does only the first word have, and which letter spells it?',
  added: 'Say both words. Which part does only the first word have, and how is it said?',
  changed:
    'Say both words. Which ending does the first word have, and how did the spelling of its base change?',
  base: 'Say both words. Cover the ending of each. Which base is left, and how does the spelling show it?',
};

function contrastBlock({ kind, pairs }: Contrasts, label: string): LessonBlock {
  return {
    ...block(
      'contrasts',
      `Pairs: ${label}`,
      'table',
      pairs.map((pair) => pair.map(({ word }) => word)),
      PAIR_NOTES[kind],
    ),
    columns: [...FOR_PUPILS, ...FOR_PUPILS],
  };
}

function chainBlock(
  input: LessonInput,
  examples: readonly ListedWord[],
  findSteps: FindSteps,
  chosen: (id: string) => string,
  picker: Picker,
): LessonBlock {
  const any = chosen('chain-step') === 'any';
  const isAlone = aloneBySound(listWords(input));
  const plain = examples.filter((word) => word.plain && isAlone(word));
  const follow = plainSteps(findSteps, isAlone);
  const length = Number(chosen('chain-length'));
  const chains: (readonly ListedWord[])[] = [];
  for (let i = 0; i < CHAINS; i++)
    chains.push(findChain(plain, follow, any ? ANY : CHANGE, length, picker, new Set(chains.flat())));
  return block(
    'chains',
    any ? 'Chains: change, add or remove one sound each time' : 'Chains: change one sound each time',
    'chain',
    chains.filter((chain) => chain.length >= SHORTEST_CHAIN).map((chain) => chain.map(({ word }) => word)),
    'Say the next word. Pupils change only the letters they need, then read the word.',
  );
}

/**
 * Finds the steps to words that children know and that differ in one sound that is plainly heard. Six to sit is two
 * sounds. The steps of each word are computed once.
 */
function plainSteps(findSteps: FindSteps, isAlone: (word: ListedWord) => boolean): FindSteps {
  const stepsFrom = rememberFor((from: ListedWord) =>
    findSteps(from).filter(
      ({ to, ...step }) => to.plain && isAlone(to) && isOneSoundApart(from, { to, ...step }),
    ),
  );
  return (from, kinds = ANY) => stepsFrom(from).filter(({ kind }) => kinds.has(kind));
}

/**
 * Returns a test for words that no other word of the list sounds like. Such a word can be written in only one way when
 * it is heard. Mail is excluded where male is known.
 */
const aloneBySound = rememberFor((words: readonly ListedWord[]): ((word: ListedWord) => boolean) => {
  const times = new Map<string, number>();
  for (const { pronunciation } of words) times.set(pronunciation, (times.get(pronunciation) ?? 0) + 1);
  return ({ pronunciation }) => times.get(pronunciation) === 1;
});

function isOneSoundApart(from: ListedWord, { to, place, kind }: OneStep): boolean {
  const unit = (kind === 'add' ? to : from).units[place]!;
  // The s of hips is not pronounced like the s of hills.
  if (isAffixUnit(unit) || endingsOf(from) !== endingsOf(to)) return false;
  return kind === 'change' ? differInOneSound(unit, to.units[place]!) : isOneSound(unit);
}

function endingsOf({ reading }: ListedWord): string {
  return reading.units.flatMap(({ affix, sound }) => (affix === undefined ? [] : [sound])).join(' ');
}

/**
 * Finds words one step away among short words without affixes, if enough of these show the pattern. Otherwise (endings,
 * long words) the search covers all common words. The result is kept for each list.
 */
function stepsAmong(input: LessonInput, examples: readonly ListedWord[]): FindSteps {
  const find = examples.filter(isShort).length >= ENOUGH ? stepsAmongShort : stepsAmongCommon;
  return find(listWords(input));
}

const isShort = ({ syllables, built }: ListedWord): boolean => syllables === 1 && !built;
const stepsAmongShort = rememberFor((words: readonly ListedWord[]) => createFindSteps(words.filter(isShort)));
const stepsAmongCommon = rememberFor((words: readonly ListedWord[]) =>
  createFindSteps(words.filter(({ order }) => order < COMMON)),
);

function block(
  id: string,
  title: string,
  layout: LessonBlock['layout'],
  rows: LessonBlock['rows'],
  note?: string,
): LessonBlock {
  return { id, title, layout, columns: FOR_PUPILS, rows, ...(note === undefined ? {} : { note }) };
}

function areBlends(ids: readonly PatternId[]): boolean {
  return ids.every((id) => catalogue.some((row) => row.id === id && isBlend(row)));
}
