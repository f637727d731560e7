import { splitKey, tokenize } from '../../analyze/index.ts';
import type { Reading, WordKey } from '../../analyze/types.ts';
import { isForeign } from '../../variety/index.ts';
import type { LessonInput } from '../lesson-input.ts';
import type { BankWord } from '../word-bank.ts';
import { stepsBefore } from '../words-of-patterns.ts';

/** A word worth talking about. */
export interface Candidate {
  readonly word: BankWord;
  readonly reading: Reading;
  readonly readable: boolean;
  /** The forms of the word in the passage, in lower case: gulls, gull. Empty without a passage. */
  readonly forms: readonly string[];
}

/**
 * The rank, among common words, of the word most worth teaching: pier, lantern. The words want and go are known
 * already, and vestibule is of no use.
 */
const BEST_RANK = 4500;
/** The rank up to which words are known to every child who speaks English. */
const TOO_COMMON = 600;
/**
 * The fewest words of a lesson that give a choice, and the number of earlier steps whose words are added where there
 * are fewer.
 */
const ENOUGH = 4;
const STEPS_BACK = 6;

/**
 * Returns the words most worth teaching, the best first. These words have a meaning of their own, are neither too
 * common nor too rare, are not known by sight and have one reading. With a passage they are words of the passage in
 * dictionary form (gull for gulls), readable or not. Without a passage they are words that practise the lesson's
 * patterns, then all words that can be read.
 */
export function findCandidates(input: LessonInput): Candidate[] {
  const found = input.passage ? ofPassage(input, input.passage.text) : ofBank(input);
  const weight = ({ word, forms, readable }: Candidate): number =>
    Math.abs(Math.log(word.rank / BEST_RANK)) +
    (readable ? 0 : 0.5) +
    (/^[nv]/.test(word.parts) ? 0 : 0.4) +
    (forms.length > 1 ? -0.2 : 0);
  return found
    .map((candidate) => ({ candidate, weight: weight(candidate) }))
    .sort((a, b) => a.weight - b.weight || a.candidate.word.rank - b.candidate.word.rank)
    .map(({ candidate }) => candidate);
}

function ofPassage({ analyzer, bank, judge, known }: LessonInput, text: string): Candidate[] {
  const candidates = new Map<string, Candidate>();
  const wrong = new Set<string>();
  for (const { kind, key } of tokenize(text)) {
    const { word: form } = splitKey(key);
    if (kind !== 'word' || !isPlainWord(key, judge)) continue;
    const base = analyzer.analyze(form).readings[0]!.base ?? form;
    const word = [form, base]
      .map((each) => bank.find(each))
      .find((each) => each !== undefined && isWorth(each));
    if (!word || isForeign(word.word, known.accent)) continue;
    // The passage has a verb form (it barked), but the meaning is a thing (the bark of a dog).
    if (form !== word.word && isDoing(form) && isOfThing(word)) {
      wrong.add(word.word);
      continue;
    }
    const before = candidates.get(word.word);
    const { readings, homograph } = analyzer.analyze(word.word);
    if (homograph || judge(word.word).standing === 'by-sight') continue;
    candidates.set(word.word, {
      word,
      reading: readings[0]!,
      readable: known.reads(word.word),
      forms: [...new Set([...(before?.forms ?? []), form])],
    });
  }
  return [...candidates.values()].filter(({ word }) => !wrong.has(word.word));
}

/** Whether a word of a passage is no name of the group, no capital, and no homograph with a reading of its own. */
function isPlainWord(key: WordKey, { group: { names, smallNames } }: LessonInput['judge']): boolean {
  const { word, reading, capital } = splitKey(key);
  if (reading !== null || word !== word.toLowerCase()) return false;
  return !smallNames.has(word) && (capital === 'small' || !names.has(word));
}

/** Whether the meaning of a word is a thing: the bark of a tree. */
function isOfThing({ meaning }: BankWord): boolean {
  return !isOfDoing(meaning) && !isOfKind(meaning);
}

/** Whether a form is the form of an action: barked, barking. */
export function isDoing(form: string): boolean {
  return /(?:ed|ing)$/.test(form);
}

/** Whether a meaning is the meaning of an action: to make a sound as a dog does. */
export function isOfDoing(meaning: string): boolean {
  return meaning.startsWith('to ');
}

/** Whether a meaning says of what kind a thing is: very wet. The ed and ing of such words mark no action. */
function isOfKind(meaning: string): boolean {
  return !/^(?:an?|the|some|any|one|two|someone|something|what|people|animals|things)\b/.test(meaning);
}

function ofBank(input: LessonInput): Candidate[] {
  const { known } = input;
  const words = known.words.filter(
    (word) => isWorth(word) && !word.homograph && word.standing !== 'by-sight' && word.word.length > 2,
  );
  const fresh = words.filter(({ standing }) => standing === 'fresh');
  const recent = new Set(stepsBefore(input, STEPS_BACK).flat());
  const late = words.filter(({ reading }) => reading.requires.some((id) => recent.has(id)));
  return ([fresh, [...fresh, ...late]].find(({ length }) => length >= ENOUGH) ?? words).map((word) => ({
    word,
    reading: word.reading,
    readable: true,
    forms: [],
  }));
}

function isWorth({ rank, parts, meaning }: BankWord): boolean {
  return rank > TOO_COMMON && parts !== '' && meaning !== '';
}
