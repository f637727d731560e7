import { PREFIXES, type Prefix } from '../../analyze/morphology/affixes.ts';
import type { Derivation } from './derivation.ts';
import { mentions } from './evidence.ts';
import type { Candidate } from './find-suffix.ts';
import { type Facts, looksLikeName } from './lexical-facts.ts';
import { joinSounds, keepsConsonants, type Sounds, sameSounds, soften, startsWith } from './match-sound.ts';
import { isPlausiblePrefix } from './prefix-rules.ts';

/**
 * Returns every prefix that may have formed `word`: unzip, replay; not uncle, ready, president. The base must be a word
 * with a fitting part of speech. The word must sound like prefix + base, apart from stress (n + n may be pronounced
 * once). The definition must agree with both.
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
    if (!fit || !isPlausiblePrefix(word, base, prefix, fit.same, facts, found)) continue;
    // Vowels that CMUdict writes in two ways (unrealistic) are misleading only in short bases.
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
        // The Y of unite is dropped in reunite.
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
