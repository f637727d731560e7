import { buildRecord } from '../../analyze/build/build-word.ts';
import type { BuiltWord } from '../../analyze/build/built-word.ts';
import { type GuessToken, keyOf, tokensOf } from '../../analyze/guess/guess-token.ts';
import { type ModelHeader, ROLES } from '../../analyze/guess/model-format.ts';
import type { WordRecord } from '../../analyze/lexicon/word-record.ts';
import { trainModel } from './train-model.ts';
import { writeModel } from './write-model.ts';

const ROLE_LETTERS = new Map(Object.entries(ROLES).map(([letter, role]) => [role, letter]));

/** The file of the guessing model, learnt from how the table's own words are spelt; takes some seconds. */
export function buildGuesser(records: ReadonlyMap<string, WordRecord>): Uint8Array {
  const words: GuessToken[][] = [];
  const find = rememberBuilt(records);
  for (const word of [...records.keys()].sort()) {
    if (!/^[a-z]{2,25}$/.test(word)) continue;
    const built = find(word)[0];
    const tokens = built && tokensOf(word, built);
    if (tokens) words.push(tokens.reverse());
  }
  const uses = new Map<string, { readonly token: GuessToken; count: number }>();
  for (const token of words.flat()) {
    const known = uses.get(keyOf(token));
    if (known) known.count++;
    else uses.set(keyOf(token), { token, count: 1 });
  }
  const ranked = [...uses].sort(([a, x], [b, y]) => y.count - x.count || (a < b ? -1 : 1));
  const numbers = new Map(ranked.map(([key], i) => [key, i + 2]));
  const model = trainModel(
    words.map((tokens) => tokens.map((token) => numbers.get(keyOf(token))!)),
    ranked.length + 2,
  );
  return writeModel(
    model,
    ranked.map(([, { token }]) => rowOf(token)),
  );
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

function rowOf({ role, text, letters, sound, spells }: GuessToken): ModelHeader['tokens'][number] {
  return [ROLE_LETTERS.get(role)!, text, letters, sound, spells ?? ''];
}
