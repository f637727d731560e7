import { PREFIXES, type Prefix } from '../../analyze/morphology/affixes.ts';
import type { Derivation } from './derivation.ts';
import { mentions, pointsTo } from './evidence.ts';
import type { Candidate } from './find-suffix.ts';
import { type Facts, isLemma, looksLikeName, partsOf, rankOf, shareOne } from './lexical-facts.ts';
import { joinSounds, keepsConsonants, type Sounds, sameSounds, soften, startsWith } from './match-sound.ts';

/** Also a word by itself; before a noun it makes a compound instead (overcoat, upstairs). */
const ALSO_WORDS = new Set(['over', 'under', 'out', 'up']);

/**
 * Every prefix that may have made `word`: the base is a word of a fitting part of speech, the word sounds
 * like prefix + base (stress aside; n + n may be said once), and the definition agrees with both: unzip,
 * replay; not uncle, ready, president.
 */
export function findPrefixes(
  word: string,
  words: ReadonlyMap<string, readonly Sounds[]>,
  facts: Facts,
  found: ReadonlyMap<string, Derivation>,
): Candidate[] {
  const candidates: Candidate[] = [];
  for (const prefix of PREFIXES) {
    if (!word.startsWith(prefix.text) || word.length - prefix.text.length < 2) continue;
    const base = word.slice(prefix.text.length);
    const readings = words.get(base);
    if (!readings || !/[aeiouy]/.test(base) || looksLikeName(word, facts)) continue;
    const fit = bestReading(words.get(word)!, readings, prefix);
    if (!fit || !plausible(word, base, prefix, fit.same, facts, found)) continue;
    // Vowels CMUdict writes in two ways (unrealistic) deceive only in short bases.
    if (!fit.same && base.length < 4) continue;
    candidates.push({
      derivation: {
        base,
        affix: prefix.text,
        kind: 'prefix',
        change: 'none',
        wordReading: fit.word,
        baseReading: fit.same ? fit.base : -1,
      },
      score: 70 + (meant(word, base, prefix, facts) ? 10 : 0),
    });
  }
  return candidates;
}

interface Fit {
  readonly word: number;
  readonly base: number;
  readonly same: boolean;
}

function bestReading(word: readonly Sounds[], base: readonly Sounds[], prefix: Prefix): Fit | null {
  let near: Fit | null = null;
  for (const sounding of prefix.soundings) {
    const head = soften(sounding);
    for (const [w, sounds] of word.entries()) {
      for (const [b, baseSounds] of base.entries()) {
        // The Y of union is lost in reunion.
        const joined = joinSounds(
          head,
          baseSounds[0] === 'Y' && word.every((one) => one[head.length] !== 'Y')
            ? baseSounds.slice(1)
            : baseSounds,
        );
        const once = head.at(-1) === baseSounds[0] ? joined.toSpliced(head.length, 1) : joined;
        if (sameSounds(joined, sounds) || sameSounds(once, sounds)) return { word: w, base: b, same: true };
        if (startsWith(sounds, head) && keepsConsonants(joined, sounds))
          near ??= { word: w, base: b, same: false };
      }
    }
  }
  return near;
}

function meant(word: string, base: string, prefix: Prefix, facts: Facts): boolean {
  return (
    (facts.related?.get(word)?.has(base) ?? false) ||
    mentions(word, base, facts) ||
    prefix.means.test(facts.glosses?.get(word) ?? '')
  );
}

function plausible(
  word: string,
  base: string,
  prefix: Prefix,
  same: boolean,
  facts: Facts,
  found: ReadonlyMap<string, Derivation>,
): boolean {
  const parts = partsOf(base, facts, found);
  const own = isLemma(word, facts) ? [...facts.lemmas.get(word)!].join('') : '';
  if (!shareOne(prefix.joins, parts)) return false;
  const commoner = rankOf(base, facts) < rankOf(word, facts);
  const linked = pointsTo(word, base, facts) || mentions(word, base, facts);
  const means = prefix.means.test(facts.glosses?.get(word) ?? '');
  if (ALSO_WORDS.has(prefix.text)) {
    return (
      base.length > 2 && (own === '' || (shareOne('va', own) && !(own.includes('n') && !own.includes('v'))))
    );
  }
  const made = found.get(base);
  if (!same && !linked && !/^(un|i[nmlr])$/.test(prefix.text)) return false;
  if (prefix.text === 'un')
    return base.length > 1 && (own === '' ? commoner || made !== undefined : shareOne(own, parts));
  // rebuilt and repaid: past forms WordNet lacks, of built and paid, which it has as adjectives.
  if (own === '') return base.length > 3 && commoner && /^(re|dis|mis|over|under|non|pre)$/.test(prefix.text);
  if (/^i[nmlr]$/.test(prefix.text)) {
    // A noun takes in- only along with its adjective (injustice); inside and income are compounds.
    if (!shareOne(own.replace('v', ''), parts)) return false;
    if (pointsTo(word, base, facts)) return true;
    // insecure, irresponsible, independence: long adjectives and what is made of them need no definition.
    const long = base.length > 5 && made?.affix !== 'ing';
    return long
      ? parts.includes('a') || made?.kind === 'suffix'
      : base.length > 4 && parts.includes('a') && means;
  }
  if (
    /^(dis|mis|en)$/.test(prefix.text) &&
    parts.includes('v') &&
    own.includes('v') &&
    base.length > 2 &&
    commoner
  )
    return true;
  if (prefix.text === 'dis' && means && commoner && base.length > 3) return true;
  if (/^(re|mis|de|dis)$/.test(prefix.text) && !shareOne(own, parts)) return linked;
  if (
    prefix.text === 're' &&
    own.includes('v') &&
    parts.includes('v') &&
    commoner &&
    base.length > 3 &&
    made === undefined
  )
    return true;
  return linked || (commoner && base.length > 2 && means);
}
