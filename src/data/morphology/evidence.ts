import { readWordList } from '../read-word-list.ts';

/** Function words and stock words of definitions. They say nothing about the parts of a word. */
const STOCK = readWordList('stock-words.txt');

export interface WordFacts {
  readonly related?: ReadonlyMap<string, ReadonlySet<string>>;
  readonly glosses?: ReadonlyMap<string, string>;
}

/**
 * Whether WordNet shows that `word` comes from `base`. There must be a pointer between the two words, a pointer from
 * each to a shared word (lucky, luckiness), or the base, possibly inflected, in the definition of the word (pancake: "…
 * cake …"). corner and corn are not related.
 */
export function showsKinship(word: string, base: string, facts: WordFacts): boolean {
  if (pointsTo(word, base, facts)) return true;
  const kin = facts.related?.get(word);
  const baseKin = facts.related?.get(base);
  if (kin && baseKin) for (const one of kin) if (baseKin.has(one)) return true;
  return mentions(word, base, facts);
}

/** Whether WordNet has a pointer from the word to the base: photographer, photograph; not flower, flow. */
export function pointsTo(word: string, base: string, facts: WordFacts): boolean {
  return facts.related?.get(word)?.has(base) ?? false;
}

/** Whether a definition of `word` uses `base` or an inflected form of the base. */
export function mentions(word: string, base: string, facts: WordFacts): boolean {
  const gloss = facts.glosses?.get(word);
  if (!gloss || STOCK.has(base)) return false;
  const root = base.length > 4 ? base.replace(/[ey]$/, '') : base;
  for (const token of gloss.match(/[a-z]+/g) ?? []) {
    if (token === base) return true;
    if (token !== word && root.length >= 3 && token.startsWith(root) && token.length <= base.length + 4) {
      if (
        /^(s|es|ed|d|ing|er|ers|e|y|ies|ied|ly|ity|ion|ions|al|ic|n|en|.ing|.ed|.er)$/.test(
          token.slice(root.length),
        )
      )
        return true;
    }
  }
  return false;
}
