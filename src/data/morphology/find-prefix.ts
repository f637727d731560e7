import { PREFIXES, type Prefix } from '../../analyze/morphology/affixes.ts';
import type { Derivation } from './derivation.ts';
import { mentions } from './evidence.ts';
import type { Candidate } from './find-suffix.ts';
import { type Facts, isLemma, looksLikeName, partsOf, rankOf, shareOne } from './lexical-facts.ts';
import { type Sounds, sameSounds, soften } from './match-sound.ts';

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
    if (!fit || !plausible(word, base, prefix, facts, found)) continue;
    candidates.push({
      derivation: {
        base,
        affix: prefix.text,
        kind: 'prefix',
        change: 'none',
        wordReading: fit.word,
        baseReading: fit.base,
      },
      score: 70 + (meant(word, base, prefix, facts) ? 10 : 0),
    });
  }
  return candidates;
}

function bestReading(word: readonly Sounds[], base: readonly Sounds[], prefix: Prefix) {
  for (const sounding of prefix.soundings) {
    const head = soften(sounding);
    for (const [w, sounds] of word.entries()) {
      for (const [b, baseSounds] of base.entries()) {
        if (sameSounds([...head, ...baseSounds], sounds)) return { word: w, base: b };
        if (head.at(-1) === baseSounds[0] && sameSounds([...head, ...baseSounds.slice(1)], sounds))
          return { word: w, base: b };
      }
    }
  }
  return null;
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
  facts: Facts,
  found: ReadonlyMap<string, Derivation>,
): boolean {
  const parts = partsOf(base, facts, found);
  const own = isLemma(word, facts) ? [...facts.lemmas.get(word)!].join('') : '';
  if (!shareOne(prefix.joins, parts)) return false;
  const commoner = rankOf(base, facts) < rankOf(word, facts);
  const linked = (facts.related?.get(word)?.has(base) ?? false) || mentions(word, base, facts);
  if (ALSO_WORDS.has(prefix.text)) {
    return (
      base.length > 2 && (own === '' || (shareOne('va', own) && !(own.includes('n') && !own.includes('v'))))
    );
  }
  if (prefix.text === 'un')
    return base.length > 1 && (own === '' ? commoner || found.has(base) : shareOne(own, parts));
  if (own === '') return base.length > 3 && commoner && /^(re|dis|mis|over|under|non|pre)$/.test(prefix.text);
  if (/^i[nmlr]$/.test(prefix.text)) {
    // A noun takes in- only along with its adjective (injustice); inside and income are compounds.
    if (!shareOne(own.replace('v', ''), parts)) return false;
    if (!/[ar]/.test(parts) && !facts.related?.get(word)?.has(base) && found.get(base)?.kind !== 'suffix')
      return false;
  }
  if (/^(re|mis|de|dis)$/.test(prefix.text) && !shareOne(own, parts)) return linked;
  return linked || (commoner && base.length > 2 && prefix.means.test(facts.glosses?.get(word) ?? ''));
}
