import { cutWords } from '../../swap/cut-words.ts';
import { findForms, type Lemmas } from '../../swap/find-forms.ts';
import type { Irregulars } from '../../swap/inflect.ts';
import { FOLLOWERS } from '../../swap/table-format.ts';
import { readBrown } from '../homographs/read-brown.ts';
import type { Synsets } from './read-synsets.ts';

/** The fewest occurrences of a word that is counted. A rarer word tells nothing about the words that follow it. */
const LEAST = 12;

/**
 * Counts which function words follow a word: afraid of, told them, decision to. Base forms are counted in the Brown
 * corpus and in WordNet's definitions and examples (two million words). The result has the form of the table: the word,
 * then one number for each of `FOLLOWERS`. The number is the share of the word's occurrences in 250ths, at least 1 if
 * the follower occurred at all.
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
