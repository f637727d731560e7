import { irregularForms } from '../../analyze/standing/irregular-forms.ts';
import type { Derivation } from './derivation.ts';
import { findCompounds } from './find-compound.ts';
import { findPrefixes } from './find-prefix.ts';
import { type Candidate, findSuffixes } from './find-suffix.ts';
import type { Facts } from './lexical-facts.ts';
import { type Sounds, sameSounds, soften } from './match-sound.ts';

/**
 * Corrections made by hand: words that only look derived (`deny`), and derivations that the rules cannot find
 * (`allow`).
 */
export interface Corrections {
  readonly deny: ReadonlySet<string>;
  readonly allow: ReadonlyMap<string, Pick<Derivation, 'base' | 'affix' | 'kind' | 'change'>>;
}

const NONE: Corrections = { deny: new Set(), allow: new Map() };

/**
 * Returns the last step in the formation of each word that has one. `words` maps a spelling in lower case to its
 * pronunciations (CMUdict phones with stress). Look up the base for the next step: carelessness = careless + ness,
 * careless = care + less.
 *
 * All of this evidence is needed: the spelling follows a rule, the base is heard in the word, the parts of speech fit,
 * and the meaning or the frequency agrees. Shorter words come first, so that the formation of a base is known (un +
 * expected needs expect + ed). The same input gives the same output: nothing else is read.
 */
export function findDerivations(
  words: ReadonlyMap<string, readonly (readonly string[])[]>,
  facts: Facts,
  corrections: Corrections = NONE,
): Map<string, Derivation> {
  const sounds = new Map<string, Sounds[]>();
  for (const [word, readings] of words) if (/^[a-z]+$/.test(word)) sounds.set(word, readings.map(soften));
  const found = new Map<string, Derivation>();
  const stresses = (word: string, reading: number) =>
    words.get(word)![reading]!.filter((phone) => /[12]/.test(phone)).length;
  const byLength = [...sounds.keys()].sort((a, b) => a.length - b.length || (a < b ? -1 : 1));
  for (const word of byLength) {
    if (corrections.deny.has(word)) continue;
    const candidates = findAll(word, sounds, stresses, facts, found);
    const allowed = corrections.allow.get(word);
    if (allowed) {
      const same = candidates.find(
        ({ derivation }) => derivation.base === allowed.base && derivation.affix === allowed.affix,
      );
      found.set(word, {
        ...allowed,
        wordReading: same?.derivation.wordReading ?? 0,
        baseReading: same?.derivation.baseReading ?? -1,
      });
      continue;
    }
    const best = likeliest(candidates);
    if (best) found.set(word, best);
  }
  joinIrregularForms(found, sounds, corrections.deny);
  return found;
}

/**
 * Adds irregular forms of derived words with the same parts: rewrote and rewritten like rewrite, overcame like
 * overcome, understood like understand. forgave is not added, because forgive is not derived. The irregular form has to
 * be heard in the word.
 */
function joinIrregularForms(
  found: Map<string, Derivation>,
  sounds: ReadonlyMap<string, readonly Sounds[]>,
  deny: ReadonlySet<string>,
): void {
  for (const { base, affix, kind } of [...found.values()]) {
    if (kind === 'suffix') continue;
    const [first, last] = kind === 'prefix' ? [affix, base] : [base, affix];
    for (const form of irregularForms(last)) {
      const word = first + form;
      const readings = sounds.get(word);
      if (!readings || deny.has(word)) continue;
      for (const [b, formSounds] of (sounds.get(form) ?? []).entries()) {
        const w = readings.findIndex((one) => sameSounds(one.slice(-formSounds.length), formSounds));
        if (w < 0) continue;
        const parts = kind === 'prefix' ? { base: form, baseReading: b } : { base, baseReading: 0 };
        found.set(word, {
          ...parts,
          affix: kind === 'prefix' ? affix : form,
          kind,
          change: 'none',
          wordReading: w,
        });
        break;
      }
    }
  }
}

function findAll(
  word: string,
  sounds: Map<string, Sounds[]>,
  stresses: (word: string, reading: number) => number,
  facts: Facts,
  found: Map<string, Derivation>,
): Candidate[] {
  return [
    ...findSuffixes(word, sounds, facts, found),
    ...findPrefixes(word, sounds, facts, found),
    ...findCompounds(word, sounds, stresses, facts, found),
  ];
}

function likeliest(candidates: readonly Candidate[]): Derivation | null {
  let best: Candidate | null = null;
  for (const candidate of candidates) if (!best || candidate.score > best.score) best = candidate;
  return best?.derivation ?? null;
}
