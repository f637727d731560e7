import { readWordList } from '../read-word-list.ts';

/** Grammar and stock words of definitions: they say nothing about what a word is made of. */
const STOCK = readWordList('stock-words.txt');

export interface WordFacts {
  readonly related?: ReadonlyMap<string, ReadonlySet<string>>;
  readonly glosses?: ReadonlyMap<string, string>;
}

/**
 * True when WordNet shows that `word` comes from `base`: a pointer between them or over one shared word
 * (lucky, luckiness), or the base, also inflected, in the word's definition (pancake: "… cake …").
 * Not so for corner and corn.
 */
export function showsKinship(word: string, base: string, facts: WordFacts): boolean {
  if (pointsTo(word, base, facts)) return true;
  const kin = facts.related?.get(word);
  const baseKin = facts.related?.get(base);
  if (kin && baseKin) for (const one of kin) if (baseKin.has(one)) return true;
  return mentions(word, base, facts);
}

/** True when WordNet has a pointer between the two: photographer, photograph; not flower, flow. */
export function pointsTo(word: string, base: string, facts: WordFacts): boolean {
  return facts.related?.get(word)?.has(base) ?? false;
}

/** True when a definition of `word` uses `base` or an inflected form of it. */
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
