import type { Evidence, Source } from './gather-candidates.ts';

/**
 * What each piece of evidence adds to the log odds that a swap is a good one. Learnt from our own list (is a
 * candidate of WordNet among the swaps that a person wrote for that word?), see `tests/accuracy/learn-swaps.ts`.
 */
const WEIGHTS = {
  none: -3.6,
  synonyms: 1.6,
  wider: 0.6,
  similar: 0.8,
  glosses: 1.0,
  near: 3.5,
  /** For each doubling of the swap's rank. */
  rare: -0.25,
  several: -0.3,
};
/** Log odds of the first, second, … swap of our own list. */
const OWN = [2.4, 1.7, 1.2, 0.9, 0.6, 0.4];
const RARE_FROM = 400;

/** How likely a swap is good where nothing is known of the sentence: 0 to 1. `off`: sources that are left out. */
export function weighEvidence(evidence: Evidence, rank: number, off: ReadonlySet<Source>): number {
  const has = (source: Source): boolean => !off.has(source);
  if (has('own') && evidence.own > 0) {
    return odds((OWN[evidence.own - 1] ?? OWN.at(-1)!) + (has('vectors') ? evidence.near * 0.3 : 0));
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
      (evidence.lemma.includes(' ') ? WEIGHTS.several : 0),
  );
}

function odds(log: number): number {
  return 1 / (1 + Math.exp(-log));
}
