import type { SyllableType } from '../types.ts';
import affixes from './affix-syllables.json' with { type: 'json' };

export interface AffixSyllables {
  /** The lengths of the syllables, in letters. */
  readonly lengths: readonly number[];
  readonly types: readonly SyllableType[];
}

/** A row of affix-syllables.json: an affix with one or two syllables. A dot marks the cut. */
interface AffixRow {
  readonly cut: string;
  readonly types: readonly string[];
}

function readRows(rows: readonly AffixRow[]): ReadonlyMap<string, AffixSyllables> {
  return new Map(
    rows.map(({ cut, types }) => [
      cut.replaceAll('.', ''),
      { lengths: cut.split('.').map((piece) => piece.length), types: types as SyllableType[] },
    ]),
  );
}

const suffixes = readRows(affixes.suffixes);
const prefixes = readRows(affixes.prefixes);
/**
 * Suffixes from Latin and Greek, and other suffixes that count as part of the word when it is divided: mas.sive,
 * con.fu.sion. All other suffixes keep the base together: call.ing, small.est.
 */
const JOINS_DIVISION = new Set(
  affixes.suffixes.filter((row) => row.divides === 'with the base').map(({ cut }) => cut.replaceAll('.', '')),
);
const SYLLABIC_ENDING: AffixSyllables = { lengths: [2], types: ['closed'] };

/** The weak ate of fortunate, whose e does not make the vowel long; not the ate of decorate. */
const WEAK_ATE: AffixSyllables = { lengths: [3], types: ['other'] };

/**
 * Returns the syllables of an affix, or null if it is no syllable of its own. `sound` distinguishes planted from
 * helped.
 */
export function affixSyllables(
  role: 'prefix' | 'suffix',
  letters: string,
  sound: string,
): AffixSyllables | null {
  if (role === 'prefix') return prefixes.get(letters) ?? null;
  if (letters === 'ed' || letters === 'es')
    return sound === 'IH.D' || sound === 'IH.Z' ? SYLLABIC_ENDING : null;
  if (letters === 'ate' && sound === 'AX.T') return WEAK_ATE;
  return suffixes.get(letters) ?? null;
}

/**
 * True for -ous and -ive, false for -ing and -ness. `before` has the letters before the suffix. These letters decide
 * for some suffixes. Joined: mar.riage, pas.sage, crit.i.cism, pho.tog.ra.phy. Not joined: short.age, art.ist, worth.y.
 */
export function joinsDivision(suffix: string, before: string): boolean {
  if (suffix === 'age') return /^(.)\1$|[aeiou]/.test(before);
  if (/^is[mt]$|^i[sz]e$/.test(suffix)) return before === 'c';
  return suffix === 'y' ? before === 'ph' : JOINS_DIVISION.has(suffix);
}
