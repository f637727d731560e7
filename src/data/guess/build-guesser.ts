import { readFileSync } from 'node:fs';
import { hasVowel, mergeWeak } from '../../analyze/alignment/sounds.ts';
import { buildRecord } from '../../analyze/build/build-word.ts';
import type { BuiltWord } from '../../analyze/build/built-word.ts';
import { type GuessToken, nameOfToken, tokensOf } from '../../analyze/guess/guess-token.ts';
import { type ModelHeader, ROLES } from '../../analyze/guess/model-format.ts';
import type { WordRecord } from '../../analyze/lexicon/word-record.ts';
import { cleanPronunciation } from '../lexicon/clean-pronunciation.ts';
import { trainModel } from './train-model.ts';
import { writeModel } from './write-model.ts';

const ROLE_LETTERS = new Map(Object.entries(ROLES).map(([letter, role]) => [role, letter]));

/** A word with its tokens as the model learns them, the last token first. */
export interface TokenWord {
  readonly word: string;
  readonly tokens: readonly GuessToken[];
}

/** The pronunciations of each word with stress, as in CMUdict. */
export type Pronunciations = ReadonlyMap<string, readonly (readonly string[])[]>;

/**
 * Returns the file of the guessing model, learnt from the spelling and stress of the words in the table. Takes some
 * seconds. The weights of traits were learnt beforehand by train-choice.ts.
 */
export function buildGuesser(
  records: ReadonlyMap<string, WordRecord>,
  pronunciations: Pronunciations,
): Uint8Array {
  return learnGuesser(listTokens(records, pronunciations), readWeights());
}

/** Returns all words of the table as tokens. Words with a shortened or very long form are left out. */
export function listTokens(
  records: ReadonlyMap<string, WordRecord>,
  pronunciations: Pronunciations,
): TokenWord[] {
  const words: TokenWord[] = [];
  const find = rememberBuilt(records);
  for (const word of [...records.keys()].sort()) {
    if (!/^[a-z]{2,25}$/.test(word)) continue;
    const built = find(word)[0];
    const tokens = built && tokensOf(word, built);
    if (tokens)
      words.push({ word, tokens: markStress(word, tokens, pronunciations.get(word) ?? []).reverse() });
  }
  return words;
}

/** Returns the file of a model learnt from these words and weights. */
export function learnGuesser(words: readonly TokenWord[], weights: Int8Array): Uint8Array {
  const uses = new Map<string, { readonly token: GuessToken; count: number }>();
  for (const token of words.flatMap(({ tokens }) => tokens)) {
    const known = uses.get(fullKeyOf(token));
    if (known) known.count++;
    else uses.set(fullKeyOf(token), { token, count: 1 });
  }
  const ranked = [...uses].sort(([a, x], [b, y]) => y.count - x.count || (a < b ? -1 : 1));
  const numbers = new Map(ranked.map(([key], i) => [key, i + 2]));
  const model = trainModel(
    words.map(({ tokens }) => tokens.map((token) => numbers.get(fullKeyOf(token))!)),
    ranked.length + 2,
  );
  return writeModel(
    model,
    ranked.map(([, { token }]) => rowOf(token)),
    weights,
  );
}

function readWeights(): Int8Array {
  return Int8Array.from(readFileSync(new URL('choice-weights.bin', import.meta.url)));
}

function fullKeyOf(token: GuessToken): string {
  return `${nameOfToken(token)} ${token.stressed ? 1 : 0}`;
}

/** Marks the main stress, using the pronunciation with the same sounds, or else one with the same number of vowels. */
function markStress(
  word: string,
  tokens: readonly GuessToken[],
  pronunciations: readonly (readonly string[])[],
): GuessToken[] {
  const soundsOf = ({ sound }: GuessToken): string[] => (sound === '-' ? [] : sound.split('.'));
  const said = tokens.flatMap(soundsOf);
  const vowels = said.filter(hasVowel).length;
  const fitting = pronunciations.filter((phones) => phones.filter(isVowelPhone).length === vowels);
  const merged = mergeWeak(said.join(' '));
  const phones =
    fitting.find((one) => mergeWeak(cleanPronunciation(word, one).join(' ')) === merged) ?? fitting[0];
  const stresses = phones?.filter(isVowelPhone).map((phone) => phone.endsWith('1')) ?? [];
  let at = 0;
  return tokens.map((token) => {
    const own = soundsOf(token).filter(hasVowel).length;
    at += own;
    return { ...token, stressed: stresses.slice(at - own, at).includes(true) };
  });
}

/** Whether a phone is a vowel. CMUdict writes a vowel with its stress: AE1. */
function isVowelPhone(phone: string): boolean {
  return /[012]$/.test(phone);
}

function rememberBuilt(records: ReadonlyMap<string, WordRecord>): (word: string) => readonly BuiltWord[] {
  const known = new Map<string, readonly BuiltWord[]>();
  return function find(word) {
    const before = known.get(word);
    if (before) return before;
    const record = records.get(word);
    const built = record ? buildRecord(word, record, find) : [];
    known.set(word, built);
    return built;
  };
}

function rowOf({ role, text, letters, sound, spells, stressed }: GuessToken): ModelHeader['tokens'][number] {
  return [ROLE_LETTERS.get(role)!, text, letters, sound, spells ?? '', stressed ? 1 : 0];
}
