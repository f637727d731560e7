import { isGrammarWord } from '../analyze/index.ts';
import type { Standing } from '../analyze/types.ts';
import { findFacts, plain } from './find-facts.ts';
import type { ReadWord, RewriteTask, RewriteTools } from './rewrite-task.ts';

/** The reason why a rewriting is not shown. */
export type Unfit =
  | 'same'
  | 'not-more-readable'
  | 'too-long'
  | 'name-lost'
  | 'number-lost'
  | 'negation-lost'
  | 'name-added'
  | 'number-added'
  | 'negation-added'
  | 'other-meaning';

/** A rewriting as the engine judges it. */
export interface JudgedCandidate {
  readonly text: string;
  /** Null if the rewriting may be shown. */
  readonly unfit: Unfit | null;
  /** The share of the rewriting's running words that the group can read, 0 to 1. */
  readonly readable: number;
  /** The share of the content words of the sentence that the rewriting keeps in the same or a similar word, 0 to 1. */
  readonly kept: number;
  readonly words: number;
  /** Words the group cannot read yet. */
  readonly hard: readonly string[];
}

/**
 * The smallest share of the content that a rewriting must keep. A rewriting that keeps less no longer says the same.
 * Our own figure.
 */
const LEAST_KEPT = 0.3;

/** Returns a function that judges rewritings of one sentence. */
export function createCandidateJudge(
  task: RewriteTask,
  tools: RewriteTools,
): (text: string) => JudgedCandidate {
  const { read } = tools;
  const source = task.sentence;
  const sourceWords = read(source);
  const before = shareRead(sourceWords);
  const facts = findFacts(source, sourceWords, task.names, tools.denies);
  const around = `${task.before} ${source} ${task.after}`;
  const said = new Set((around.match(/[\p{L}’'-]+/gu) ?? []).map(plain));
  const meant = meaningOf(task, tools, sourceWords);
  const longest = Math.max(task.longest, longestSentence(source));

  return (text) => {
    const words = read(text);
    const counted = words.filter(({ standing }) => COUNTED.has(standing));
    const readable = shareRead(words);
    const own = new Set(words.map(({ start, end }) => tools.baseOf(plain(text.slice(start, end)))));
    const kept =
      meant.length === 0
        ? 1
        : meant.filter((bases) => bases.some((base) => own.has(base))).length / meant.length;
    return { text, unfit: findUnfit(), readable, kept, words: counted.length, hard: hardWords(text, words) };

    function findUnfit(): Unfit | null {
      const now = findFacts(text, words, task.names, tools.denies);
      if (plainText(text) === plainText(source)) return 'same';
      if (longestSentence(text) > longest || counted.length > 2 * sourceWords.length + 6) return 'too-long';
      const isKept = (name: string): boolean => now.names.has(name) || spellsName(text, name);
      if ([...facts.names].some((name) => !isKept(name))) return 'name-lost';
      if ([...now.names].some((name) => !said.has(name))) return 'name-added';
      if (lacks(now.numbers, facts.numbers)) return 'number-lost';
      if (lacks(facts.numbers, now.numbers)) return 'number-added';
      const softer = now.softNegations - facts.softNegations;
      if (now.negations + Math.max(0, softer) < facts.negations) return 'negation-lost';
      if (now.negations > facts.negations + Math.max(0, -softer)) return 'negation-added';
      if (readable <= before) return 'not-more-readable';
      return kept < LEAST_KEPT ? 'other-meaning' : null;
    }
  };
}

/**
 * Returns the candidates that may be shown, the most readable first. Of two equally readable candidates, the one that
 * keeps more of the meaning comes first, then the shorter one.
 */
export function rankCandidates(judged: readonly JudgedCandidate[]): JudgedCandidate[] {
  const best = new Map<string, JudgedCandidate>();
  for (const each of judged) if (each.unfit === null) best.set(plainText(each.text), each);
  return [...best.values()].sort(
    (one, other) => other.readable - one.readable || other.kept - one.kept || one.words - other.words,
  );
}

const HELPERS = new Set('will would shall might may'.split(' '));

function isGrammar(word: string): boolean {
  return isGrammarWord(word) || HELPERS.has(word);
}

const COUNTED: ReadonlySet<Standing> = new Set(['reads', 'fresh', 'by-sight', 'unsure', 'beyond']);
/** The standings of words that the group can read. */
export const READ: ReadonlySet<Standing> = new Set(['reads', 'fresh', 'by-sight']);

function shareRead(words: readonly ReadWord[]): number {
  const counted = words.filter(({ standing }) => COUNTED.has(standing));
  if (counted.length === 0) return 1;
  return counted.filter(({ standing }) => READ.has(standing)).length / counted.length;
}

function hardWords(text: string, words: readonly ReadWord[]): string[] {
  const hard = words.filter(({ standing }) => standing === 'beyond');
  return [...new Set(hard.map(({ start, end }) => text.slice(start, end).toLowerCase()))];
}

/** Returns a list for each content word of the sentence: the base of the word and the bases of its synonyms. */
function meaningOf(
  { sentence }: RewriteTask,
  { baseOf, wordsFor }: RewriteTools,
  words: readonly ReadWord[],
): string[][] {
  return words.flatMap(({ start, end, standing }) => {
    const word = plain(sentence.slice(start, end));
    if (isGrammar(word) || standing === 'name' || word.length < 2) return [];
    const same = wordsFor(sentence, start, end).flatMap(({ text }) => text.toLowerCase().split(' '));
    return [[word, ...same.filter((each) => !isGrammar(each))].map(baseOf)];
  });
}

/** The number of words in the longest sentence of a text. */
export function longestSentence(text: string): number {
  return Math.max(0, ...sentencesOf(text).map((each) => each.match(/[\p{L}\p{N}’'-]+/gu)?.length ?? 0));
}

export function sentencesOf(text: string): string[] {
  return text.split(/(?<=[.?!]["”’']?)\s/);
}

function spellsName(text: string, name: string): boolean {
  return (text.match(/[\p{L}’'-]+/gu) ?? []).some((word) => /^\p{Lu}/u.test(word) && plain(word) === name);
}

/** Whether `has` lacks an item of `wanted`. An item that occurs several times in `wanted` must occur as often in `has`. */
function lacks(has: readonly string[], wanted: readonly string[]): boolean {
  const left = [...has];
  return wanted.some((each) => {
    const at = left.indexOf(each);
    if (at < 0) return true;
    left.splice(at, 1);
    return false;
  });
}

/** Returns the words of a text in lower case, without marks. */
export function plainText(text: string): string {
  return text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}
