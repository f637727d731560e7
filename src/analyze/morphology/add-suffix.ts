import type { SpellingChange } from '../types.ts';
import { findSuffix } from './affixes.ts';

export interface Suffixed {
  readonly spelling: string;
  /** The suffix as it ends up: asked for -s, `bus` gets -es; asked for -ly, `basic` gets -ally. */
  readonly affix: string;
  readonly change: SpellingChange;
}

const VOWEL_GROUP = /[aeiou]+|(?<!^)y/g;

/** True for a word of one beat as far as letters show: `hop`, `quit`, `hope`; false for `open`, `begin`. */
export function looksOneSyllable(word: string): boolean {
  const body = word.replace(/(?<=[^aeiou][^aeiou]|[aeiouy][^aeiou])e$/, '').replace(/qu/g, 'q');
  return (body.match(VOWEL_GROUP)?.length ?? 0) <= 1;
}

/** One vowel letter and one consonant letter at the end, not w, x or y: `hop`, `begin`, `quit`; not `boat`, `mix`, `help`. */
export function endsInShortPattern(word: string): boolean {
  return /(^|[^aeiouy]|qu)[aeiouy][bdfgklmnprstvz]$/.test(word) && !/(^|[^q])u[aeiouy][^aeiou]$/.test(word);
}

/**
 * Spells base + suffix by the rules the trade teaches (common practice; England's national curriculum,
 * English Appendix 1, 2013, states the same for -s, -ed, -ing, -er, -est, -y, -ly, -ness, -ful, -less).
 * `lastStressed` says whether the last syllable is stressed; left out, it is when there is only one.
 *
 * - -es after s, x, z, ch, sh: buses, mixes; not hats.
 * - y after a consonant becomes i unless the suffix begins with i: cried, happiness; not studying, played.
 * - A final e goes before a vowel: hoping; not hopeful. It stays in seeing, dyeing, canoeing, and after c
 *   or g before a or o, where it keeps them soft: changeable, courageous; not changing.
 * - -le takes -ly without its e and one l: gently; true, due and whole lose the e: truly; not safely.
 * - ie becomes y before -ing, counted as a dropped e: dying; not dies.
 * - One consonant after one vowel letter doubles when the syllable is stressed: hopping, beginning;
 *   not opening, helping, mixing, snowing, nor before Latin endings: robotic.
 * - A final c gets a k before e, i, y: panicking; not panics.
 */
export function addSuffix(base: string, suffix: string, lastStressed = looksOneSyllable(base)): Suffixed {
  const join = (stem: string, change: SpellingChange, affix = suffix): Suffixed => ({
    spelling: stem + affix,
    affix,
    change,
  });
  if (/[^aeiou]y$/.test(base) && !/^(i|'|ship|hood|like|teen|ling)/.test(suffix)) {
    const oneBeatAdjective = /^(ness|ly)$/.test(suffix) && looksOneSyllable(base);
    if (!oneBeatAdjective) return join(`${base.slice(0, -1)}i`, 'y-to-i', suffix === 's' ? 'es' : suffix);
  }
  if (suffix === 's' && /([sxz]|[cs]h)$/.test(base)) return join(base, 'none', 'es');
  if (suffix === 's' || suffix === 'es') return join(base, 'none');
  if (suffix === 'ly') {
    if (/[^aeiou]le$/.test(base)) return { spelling: `${base.slice(0, -1)}y`, affix: 'ly', change: 'drop-e' };
    if (/^(un)?(true|due)$|^whole$/.test(base)) return join(base.slice(0, -1), 'drop-e');
    if (base.endsWith('ll')) return { spelling: `${base}y`, affix: 'ly', change: 'none' };
    if (base.endsWith('ic') && base !== 'public') return join(base, 'none', 'ally');
  }
  if (!/^[aeiouy]/.test(suffix)) return join(base, 'none');
  if (base.endsWith('ie') && suffix.startsWith('i')) return join(`${base.slice(0, -2)}y`, 'drop-e');
  if (base.endsWith('e') && /[aeiouy].*e$/.test(base)) {
    const keepsSoft = /[cg]e$/.test(base) && /^[ao]/.test(suffix);
    const keepsVowel = /[eoy]e$/.test(base) && !suffix.startsWith('e') && suffix !== 'y';
    return keepsSoft || keepsVowel ? join(base, 'none') : join(base.slice(0, -1), 'drop-e');
  }
  if (base.endsWith('c') && /^[eiy]/.test(suffix) && !findSuffix(suffix)?.reshapes)
    return join(`${base}k`, 'none');
  if (findSuffix(suffix)?.doubles && lastStressed && endsInShortPattern(base))
    return join(base + base.at(-1), 'double');
  return join(base, 'none');
}
