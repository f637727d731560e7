import { SUFFIXES, type Suffix } from '../../analyze/morphology/affixes.ts';
import { restoreStem } from '../../analyze/morphology/restore-stem.ts';
import type { Derivation } from './derivation.ts';
import { showsKinship } from './evidence.ts';
import { type Facts, isLemma, looksLikeName, partsOf, RAREST, rankOf, shareOne } from './lexical-facts.ts';
import { matchSuffixSound, type Sounds } from './match-sound.ts';

export interface Candidate {
  readonly derivation: Derivation;
  /** Higher is likelier; only compared among candidates of one word. */
  readonly score: number;
}

const BY_ENDING = new Map<string, Suffix[]>();
for (const suffix of SUFFIXES) {
  const ending = suffix.text.slice(-1);
  BY_ENDING.set(ending, [...(BY_ENDING.get(ending) ?? []), suffix]);
}

/** -ness, -ly, -less and -ful on a base that sounds the same hardly ever deceive: the few are in the deny list. */
const TRUSTED = new Set(['ness', 'ly', 'less', 'ful', 'ally', 'hood']);

/** Trusted likewise when the base is also the commoner word. */
const NATIVE = new Set([
  'ish',
  'ment',
  'some',
  'like',
  'ward',
  'wards',
  'wise',
  'ship',
  'dom',
  'teen',
  'able',
]);

/** Every suffix that may have made `word`. `found` holds the derivations of shorter words. */
export function findSuffixes(
  word: string,
  words: ReadonlyMap<string, readonly Sounds[]>,
  facts: Facts,
  found: ReadonlyMap<string, Derivation>,
): Candidate[] {
  const candidates: Candidate[] = [];
  for (const suffix of BY_ENDING.get(word.at(-1)!) ?? []) {
    for (const { stem, change } of restoreStem(word, suffix.text)) {
      const readings = words.get(stem);
      if (!readings || stem === word) continue;
      const fit = bestReading(words.get(word)!, readings, suffix, change === 'y-to-i');
      if (!fit) continue;
      const kin = isLemma(word, facts) && showsKinship(word, stem, facts);
      if (!plausible(word, stem, suffix, fit.same, kin, facts, found)) continue;
      const derivation: Derivation = {
        base: stem,
        affix: suffix.text,
        kind: 'suffix',
        change,
        wordReading: fit.word,
        baseReading: fit.same ? fit.base : -1,
      };
      const rare = rankOf(stem, facts) > 4 * rankOf(word, facts) ? 30 : 0;
      const score =
        (suffix.inflection && suffix.text !== 'er' ? 100 : 80) + (kin ? 10 : 0) - rare + stem.length;
      candidates.push({ derivation, score: score + (fit.same ? 5 : 0) + preference(suffix, stem, found) });
    }
  }
  return candidates;
}

/** creation is create + ion, not cre + ation; robbery is rob + ery like bakery, not robber + y. */
function preference(suffix: Suffix, stem: string, found: ReadonlyMap<string, Derivation>): number {
  if (suffix.text === 'ion' && stem.endsWith('ate')) return 15;
  return suffix.text === 'y' && found.get(stem)?.affix === 'er' ? -15 : 0;
}

function bestReading(word: readonly Sounds[], base: readonly Sounds[], suffix: Suffix, yChanged: boolean) {
  let reshaped: { word: number; base: number; same: boolean } | null = null;
  for (const [w, wordSounds] of word.entries()) {
    for (const [b, baseSounds] of base.entries()) {
      const match = matchSuffixSound(baseSounds, wordSounds, suffix, yChanged);
      if (match === 'same') return { word: w, base: b, same: true };
      if (match === 'reshaped') reshaped ??= { word: w, base: b, same: false };
    }
  }
  return reshaped;
}

function plausible(
  word: string,
  stem: string,
  suffix: Suffix,
  same: boolean,
  kin: boolean,
  facts: Facts,
  found: ReadonlyMap<string, Derivation>,
): boolean {
  const parts = partsOf(stem, facts, found);
  if (!shareOne(suffix.joins, parts)) return false;
  const commoner = rankOf(stem, facts) < rankOf(word, facts);
  const own = isLemma(word, facts) ? [...facts.lemmas.get(word)!].join('') : '';

  if (suffix.text === 's' || suffix.text === 'es') {
    if (!isLemma(stem, facts) && found.get(stem)?.kind !== 'suffix') return stem.length > 3 && commoner;
    if (facts.capitalised?.has(word) && !commoner) return false;
    return own === '' || commoner || kin || (same && stem.length > 2 && parts.includes('n'));
  }
  if (
    looksLikeName(word, facts) &&
    !(suffix.inflection && facts.rank.has(word) && !facts.capitalised?.has(word))
  ) {
    // Words no list counts (rare, or surnames): trust only plain inflections of known verbs and adjectives.
    const unseen = !facts.rank.has(word) && !facts.names?.has(word);
    if (!unseen || !/^(ed|ing|ly|ness)$/.test(suffix.text) || !same) return false;
    return isLemma(stem, facts) && rankOf(stem, facts) < RAREST;
  }
  if (suffix.text === 'ed' || suffix.text === 'ing') {
    if (suffix.text === 'ed' && stem.endsWith('ee') && own.includes('n') && !kin) return false;
    return (
      own === '' ||
      kin ||
      (commoner && stem.length > 2) ||
      (same && stem.length > (suffix.text === 'ed' ? 2 : 3) && parts.includes('v'))
    );
  }
  if (suffix.text === 'est') return own === '' || commoner || kin;
  if (suffix.text === 'er') {
    if (own === '') return shareOne('av', parts) || (commoner && stem.length > 3);
    if (!/[nv]/.test(own)) return commoner || kin;
    return kin || (commoner && parts.includes('v') && !own.includes('v') && stem.length > 3);
  }
  if (own === '') return same && commoner && stem.length > 3 && (TRUSTED.has(suffix.text) || stem.length > 4);
  if (!shareOne(suffix.makes, own)) return false;
  if (kin) return same || stem.length > 3 || commoner;
  if (!same || stem.length < 3) return false;
  if (suffix.text === 'ly') {
    return parts.includes('a')
      ? own.includes('r') || commoner
      : parts.includes('n') && own === 'a' && commoner;
  }
  if (suffix.text === 'y') return own === 'a' && commoner;
  return (
    TRUSTED.has(suffix.text) ||
    (commoner && NATIVE.has(suffix.text) && (suffix.text !== 'ish' || own === 'a'))
  );
}
