import { SUFFIXES, type Suffix } from '../../analyze/morphology/affixes.ts';
import { restoreStem } from '../../analyze/morphology/restore-stem.ts';
import type { Derivation } from './derivation.ts';
import { pointsTo, showsKinship } from './evidence.ts';
import { type Facts, isLemma, partsOf, RAREST, rankOf, shareOne } from './lexical-facts.ts';
import { matchSuffixSound, type Sounds } from './match-sound.ts';
import { type Evidence, isPlausibleBase } from './suffix-rules.ts';

export interface Candidate {
  readonly derivation: Derivation;
  /** A higher score is likelier. Scores are only compared among candidates for one word. */
  readonly score: number;
}

const BY_ENDING = new Map<string, Suffix[]>();
for (const suffix of SUFFIXES) {
  const ending = suffix.text.slice(-1);
  BY_ENDING.set(ending, [...(BY_ENDING.get(ending) ?? []), suffix]);
}

/** Tolerance for chance differences in rank: self is slightly rarer than selfish in a frequency list. */
const NEARLY = 1.2;

/** Returns every suffix that may have formed `word`. `found` contains the derivations of shorter words. */
export function findSuffixes(
  word: string,
  words: ReadonlyMap<string, readonly Sounds[]>,
  facts: Facts,
  found: ReadonlyMap<string, Derivation>,
): Candidate[] {
  const candidates: Candidate[] = [];
  const own = isLemma(word, facts) ? [...facts.lemmas.get(word)!].join('') : '';
  for (const suffix of BY_ENDING.get(word.at(-1)!) ?? []) {
    for (const { stem, change } of restoreStem(word, suffix.text)) {
      const readings = words.get(stem);
      const parts = readings && stem !== word ? partsOf(stem, facts, found) : '';
      if (!readings || !shareOne(suffix.joins, parts)) continue;
      const fit = bestReading(words.get(word)!, readings, suffix, change === 'y-to-i');
      if (!fit) continue;
      const kin = own !== '' && areKin(word, stem, suffix, fit.same, facts);
      const commoner = rankOf(stem, facts) < NEARLY * rankOf(word, facts);
      const evidence = {
        word,
        stem,
        suffix,
        change,
        same: fit.same,
        kin,
        commoner,
        parts,
        own,
        facts,
        found,
      };
      if (!isPlausibleBase(evidence)) continue;
      candidates.push({
        derivation: {
          base: stem,
          affix: suffix.text,
          kind: 'suffix',
          change,
          wordReading: fit.word,
          baseReading: fit.same ? fit.base : -1,
        },
        score: weigh(evidence),
      });
    }
  }
  return candidates;
}

/** Whether WordNet links word and base. Only a direct pointer counts if the base is only nearly heard. */
function areKin(word: string, stem: string, suffix: Suffix, same: boolean, facts: Facts): boolean {
  const anyTie = same || suffix.reshapes || suffix.text === 'ed' || suffix.text === 'ing';
  return anyTie ? showsKinship(word, stem, facts) : pointsTo(word, stem, facts);
}

/**
 * Scores a candidate. Commoner bases come first (masses from mass, not from masse). Unlikely bases come after any
 * prefix or compound (unarmed is un + armed, not unarm + ed).
 */
function weigh({ word, stem, suffix, change, same, kin, facts, found }: Evidence): number {
  // leaves is mainly the plural of leaf.
  if (change === 'f-to-v') return 200;
  const rank = rankOf(stem, facts);
  const isLikely = (kin && !suffix.inflection) || (found.has(stem) && isLemma(stem, facts));
  const rare = isLikely ? 0 : loseByRank(rank, rankOf(word, facts));
  const sure = suffix.inflection && suffix.text !== 'er' ? 100 : 80;
  const score = sure + (kin ? 10 : 0) + (same ? 5 : 0) - rare + stem.length - 4 * Math.log10(rank);
  // creation is create + ion, not cre + ation. bravery and directory are not braver + y and director + y.
  if (suffix.text === 'ion' && stem.endsWith('ate')) return score + 15;
  return suffix.text === 'y' && /^[eo]r$/.test(found.get(stem)?.affix ?? '') ? score - 15 : score;
}

/** Returns the penalty for a base that is far rarer than its word. */
function loseByRank(base: number, word: number): number {
  if (base <= 4 * word) return 0;
  return base >= RAREST ? 60 : 30;
}

function bestReading(word: readonly Sounds[], base: readonly Sounds[], suffix: Suffix, yChanged: boolean) {
  let near: { word: number; base: number; same: boolean } | null = null;
  for (const [w, wordSounds] of word.entries()) {
    for (const [b, baseSounds] of base.entries()) {
      const match = matchSuffixSound(baseSounds, wordSounds, suffix, yChanged);
      if (match === 'same') return { word: w, base: b, same: true };
      if (match === 'near') near ??= { word: w, base: b, same: false };
    }
  }
  return near;
}
