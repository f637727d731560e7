import type { Evidence, Source } from './gather-candidates.ts';

/**
 * The amount that each piece of evidence adds to the log odds that a swap is good. Learnt by logistic regression on our
 * own list: is a candidate of WordNet among the swaps that a person wrote for that word? With these weights, the first
 * candidate is one of the person's swaps for 66 % of the words kept apart (64 % with weights set by feel). `none` is
 * half a unit higher than learnt, since a list is never complete.
 */
const WEIGHTS = {
  none: -3.5,
  synonyms: 2.4,
  wider: 1.6,
  similar: 1.6,
  glosses: 0.9,
  near: 4.3,
  /** For each doubling of the swap's rank. */
  rare: -0.27,
  /** For each doubling of how much commoner the swap is than the word. */
  easier: 0.16,
  several: -0.9,
};
/** The log odds of the first, second, … swap of our own list. */
const OWN = [2.4, 1.7, 1.2, 0.9, 0.6, 0.4];
/** The penalty of a swap of our own list for each word after its first word. A single word is nearer the text. */
const LONGER = 0.35;
const RARE_FROM = 400;

/** Returns how likely a swap is good, without knowledge of the sentence: 0 to 1. `off`: sources that are left out. */
export function weighEvidence(
  evidence: Evidence,
  rank: number,
  wordRank: number,
  off: ReadonlySet<Source>,
): number {
  const has = (source: Source): boolean => !off.has(source);
  if (has('own') && evidence.own > 0) {
    const place = OWN[evidence.own - 1] ?? OWN.at(-1)!;
    return odds(
      place - LONGER * (evidence.lemma.split(' ').length - 1) + (has('vectors') ? evidence.near * 0.3 : 0),
    );
  }
  const synonyms = has('synonyms') ? evidence.synonyms : 0;
  const wider = has('wider') ? evidence.wider : 0;
  const similar = has('similar') ? evidence.similar : 0;
  const glosses = has('glosses') ? evidence.glosses : 0;
  if (synonyms + wider + similar + glosses === 0) return 0;
  return odds(
    WEIGHTS.none +
      WEIGHTS.synonyms * Math.sqrt(synonyms) +
      WEIGHTS.wider * Math.sqrt(wider) +
      WEIGHTS.similar * Math.sqrt(similar) +
      WEIGHTS.glosses * Math.sqrt(glosses) +
      (has('vectors') ? WEIGHTS.near * evidence.near : 1) +
      WEIGHTS.rare * Math.max(0, Math.log2(rank / RARE_FROM)) +
      WEIGHTS.easier * Math.max(-3, Math.min(5, Math.log2(wordRank / rank))) +
      (evidence.lemma.includes(' ') ? WEIGHTS.several : 0),
  );
}

function odds(log: number): number {
  return 1 / (1 + Math.exp(-log));
}
