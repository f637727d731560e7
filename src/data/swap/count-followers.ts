import { cutWords } from '../../swap/cut-words.ts';
import { findForms, type Lemmas } from '../../swap/find-forms.ts';
import type { Irregulars } from '../../swap/inflect.ts';
import { FOLLOWERS } from '../../swap/table-format.ts';
import { readBrown } from '../homographs/read-brown.ts';
import type { Synsets } from './read-synsets.ts';

/** A word met more seldom says nothing of what follows it. */
const LEAST = 12;

/**
 * Which small words follow a word: afraid of, told them, decision to. Counted by base form in the Brown corpus and in
 * WordNet's definitions and examples (two million words). As the table keeps it: word, then one number for each of
 * `FOLLOWERS`, the share of its places in 250ths, at least 1 where it was met at all.
 */
export function countFollowers(
  { byId }: Synsets,
  table: Lemmas & Irregulars,
  ids: ReadonlyMap<string, number>,
): { words: number[]; shares: number[] } {
  const place = new Map<string, number>(FOLLOWERS.map((word, i) => [word, i]));
  const counts = new Map<string, { all: number; of: number[] }>();
  const known = new Map<string, readonly string[]>();
  const lemmasOf = (word: string): readonly string[] => {
    const lemmas = known.get(word) ?? [
      ...new Set([word, ...findForms(word, table).map(({ lemma }) => lemma)]),
    ];
    known.set(word, lemmas);
    return lemmas;
  };
  const count = (words: readonly string[]): void => {
    words.forEach((word, i) => {
      if (!/^[a-z]+$/.test(word)) return;
      const next = place.get(words[i + 1] ?? '.');
      for (const lemma of lemmasOf(word)) {
        const entry = counts.get(lemma) ?? { all: 0, of: FOLLOWERS.map(() => 0) };
        counts.set(lemma, entry);
        entry.all++;
        if (next !== undefined) entry.of[next]!++;
      }
    });
  };
  for (const sentence of readBrown() ?? []) count(sentence.map(({ word }) => word.toLowerCase()));
  for (const { definition, examples } of byId.values()) {
    for (const text of [definition, ...examples]) count(cutWords(text).map(({ lower }) => lower));
  }
  const kept = [...counts]
    .flatMap(([word, { all, of }]) => {
      const id = ids.get(word);
      return id === undefined || all < LEAST ? [] : [{ id, all, of }];
    })
    .sort((one, other) => one.id - other.id);
  return {
    words: kept.map(({ id }) => id),
    shares: kept.flatMap(({ all, of }) =>
      of.map((n) => (n === 0 ? 0 : Math.max(1, Math.round((250 * n) / all)))),
    ),
  };
}
