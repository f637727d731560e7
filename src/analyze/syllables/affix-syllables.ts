import type { SyllableType } from '../types.ts';

const SHORT_NAMES: Readonly<Record<string, SyllableType>> = {
  c: 'closed',
  o: 'open',
  e: 'vce',
  t: 'team',
  r: 'r-controlled',
  l: 'consonant-le',
  x: 'other',
};

/** Affixes that are syllables, with their division and types; the rest (-s, -ed in helped) join the syllable before. */
const SUFFIXES = `ing/c er/r est/c y/o ly/o ful/c less/c ness/c ment/c a.ble/o.l i.ble/o.l ish/c en/c ous/x ion/x a.tion/o.x
a.tive/o.x ive/x al/c i.al/o.c i.ty/o.o ty/o teen/t or/r ist/c ism/c ize/e ise/e i.fy/o.o fy/o ic/c i.cal/o.c ance/c ence/c
an.cy/c.o en.cy/c.o ant/c ent/c age/x ar.y/r.o er.y/r.o o.ry/o.o ry/o hood/t ship/c ward/r wards/r wise/e some/x like/e dom/c
ess/c ee/t eer/r ure/r ate/e an/c i.an/o.c let/c ling/c ster/r al.ly/c.o`;
const PREFIXES = `un/c re/o dis/c mis/c pre/o in/c im/c il/c ir/c non/c o.ver/o.r un.der/c.r out/t up/c sub/c su.per/o.r in.ter/c.r
an.ti/c.o au.to/t.o en/c em/c de/o fore/r mid/c sem.i/c.o tel.e/c.o trans/c mul.ti/c.o co/o bi/o tri/o a/o`;

/**
 * Suffixes from Latin and Greek, and those that count as part of the word when it is divided: mas.sive, con.fu.sion.
 * Others keep the base together: call.ing, small.est.
 */
const JOINS_DIVISION = new Set(
  'ous ion ation ative ive al ial ity or ify ic ical ance ence ancy ency ant ent ary ory ure ate an ian ty fy'.split(
    ' ',
  ),
);

export interface AffixSyllables {
  /** Lengths of the syllables in letters. */
  readonly lengths: readonly number[];
  readonly types: readonly SyllableType[];
}

function readTable(table: string): ReadonlyMap<string, AffixSyllables> {
  return new Map(
    table.split(/\s+/).map((row) => {
      const [division, types] = row.split('/') as [string, string];
      const pieces = division.split('.');
      return [
        pieces.join(''),
        {
          lengths: pieces.map((piece) => piece.length),
          types: types.split('.').map((type) => SHORT_NAMES[type]!),
        },
      ];
    }),
  );
}

const suffixes = readTable(SUFFIXES);
const prefixes = readTable(PREFIXES);
const SYLLABIC_ENDING: AffixSyllables = { lengths: [2], types: ['closed'] };

/** The weak ate of fortunate, which an e does not make long; not that of decorate. */
const WEAK_ATE: AffixSyllables = { lengths: [3], types: ['other'] };

/** How an affix divides, or null when it is no syllable of its own. `sound` tells planted from helped. */
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
 * True for -ous, -ive; false for -ing, -ness. `before` are the letters before it, by which some divide with the word: mar.riage, pas.sage,
 * crit.i.cism, pho.tog.ra.phy; not short.age, art.ist, worth.y.
 */
export function joinsDivision(suffix: string, before: string): boolean {
  if (suffix === 'age') return /^(.)\1$|[aeiou]/.test(before);
  if (/^is[mt]$|^i[sz]e$/.test(suffix)) return before === 'c';
  return suffix === 'y' ? before === 'ph' : JOINS_DIVISION.has(suffix);
}
