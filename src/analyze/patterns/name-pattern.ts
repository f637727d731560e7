import { coarseRows } from '../catalogue/catalogue.ts';
import { pairSpellings } from '../catalogue/pair-spellings.ts';
import { findRule, type Rule } from '../rule.ts';
import type { Pattern, PatternId } from '../types.ts';
import { IRREGULAR } from './irregular.ts';

/** The surroundings of a spelling. They decide between rows with the same letters and sound. */
export interface Surroundings {
  readonly before: { readonly letters: string; readonly sound: string } | undefined;
  readonly after: { readonly letters: string; readonly sound: string } | undefined;
  /** True if the spelling is at the end of its syllable. */
  readonly open: boolean;
  readonly firstSyllable: boolean;
}

const AFFIX_FAMILIES = new Set(['suffix', 'prefix']);
const BLENDS = new Set(['initial blend', 'final blend']);

const rowsOf = indexRows((family) => !AFFIX_FAMILIES.has(family) && !BLENDS.has(family));
const suffixRows = indexRows((family) => family === 'suffix');
const prefixRows = indexRows((family) => family === 'prefix');

function indexRows(wanted: (family: string) => boolean): ReadonlyMap<string, readonly PatternId[]> {
  const index = new Map<string, PatternId[]>();
  const add = (key: string, { id }: Pattern): void => {
    const ids = index.get(key);
    if (ids) ids.push(id);
    else index.set(key, [id]);
  };
  for (const row of coarseRows) {
    if (!wanted(row.family)) continue;
    for (const [letters, sound] of pairSpellings(row.letters, row.sounds)) add(`${letters}:${sound}`, row);
    if (AFFIX_FAMILIES.has(row.family)) for (const letters of row.letters.split(' ')) add(letters, row);
  }
  return index;
}

/** True if the catalogue has the spelling, such as the ai of rain. False for the ai of said. */
export function isRegular(letters: string, sound: string): boolean {
  return rowsOf.has(`${letters}:${sound}`);
}

/** Returns the row of an ending or beginning by its letters. If rows differ in sound, the sound decides: -ed in planted. */
export function nameAffix(role: 'prefix' | 'suffix', letters: string, sound: string): PatternId {
  const rows = role === 'prefix' ? prefixRows : suffixRows;
  return (
    rows.get(`${letters}:${sound}`)?.[0] ??
    rows.get(letters)?.[0] ??
    rowsOf.get(`${letters}:${sound}`)?.[0] ??
    IRREGULAR
  );
}

/** A spelling with one sound and its place in the word. The catalogue has rows for this spelling. */
interface PatternPlace extends Surroundings {
  /** Letters and sound, such as a:AO. */
  readonly spelling: string;
}

/** A rule that chooses one of several rows with the same letters and sound. Its examples give their row. */
export interface PatternRule extends Rule<PatternPlace> {
  readonly row: PatternId;
}

const isBeforeR = ({ after }: PatternPlace): boolean => after?.letters[0] === 'r';
const isAfterW = ({ before }: PatternPlace): boolean => /(^|\.)W$/.test(before?.sound ?? '');

/** The rules for choosing between rows. If no rule applies, a spelling has the first row with its letters and sound. */
export const PATTERN_RULES: readonly PatternRule[] = [
  {
    name: 'a weak i that ends its syllable is a schwa',
    example: 'hel.i.cop.ter: schwa-i',
    counterExample: 'a.bol.ish: short-i',
    applies: ({ spelling, open }) => spelling === 'i:IX' && open,
    row: 'schwa-i',
  },
  {
    name: 'any other weak i is short i',
    example: 'a.bol.ish: short-i',
    counterExample: 'hel.i.cop.ter: schwa-i',
    applies: ({ spelling }) => spelling === 'i:IX',
    row: 'short-i',
  },
  {
    name: 'a before l, said aw',
    example: 'ball: a-before-l',
    counterExample: 'pal: short-a',
    applies: ({ spelling, after }) => /^a:A[AO]$/.test(spelling) && /^ll?$/.test(after?.letters ?? ''),
    row: 'a-before-l',
  },
  {
    name: 'a after w, said as short o',
    example: 'swan: a-after-w',
    counterExample: 'swam: short-a',
    applies: (place) => /^a:A[AO]$/.test(place.spelling) && isAfterW(place),
    row: 'a-after-w',
  },
  {
    name: 'a elsewhere, said ah',
    example: 'pas.ta: a-ah',
    counterExample: 'swan: a-after-w',
    applies: ({ spelling }) => spelling === 'a:AA',
    row: 'a-ah',
  },
  {
    name: 'a elsewhere, said aw, is irregular',
    example: 'gant.let: irregular',
    counterExample: 'ball: a-before-l',
    applies: ({ spelling }) => spelling === 'a:AO',
    row: IRREGULAR,
  },
  {
    name: 'long a at the end of its syllable',
    example: 'a.corn: long-a',
    counterExample: 'an.gel: a-long-closed',
    applies: ({ spelling, open }) => spelling === 'a:EY' && open,
    row: 'long-a',
  },
  {
    name: 'long a in a closed syllable',
    example: 'an.gel: a-long-closed',
    counterExample: 'a.corn: long-a',
    applies: ({ spelling }) => spelling === 'a:EY',
    row: 'a-long-closed',
  },
  {
    name: 'long i at the end of its syllable',
    example: 'spi.der: long-i',
    counterExample: 'child: i-long-closed',
    applies: ({ spelling, open }) => spelling === 'i:AY' && open,
    row: 'long-i',
  },
  {
    name: 'long i in a closed syllable',
    example: 'child: i-long-closed',
    counterExample: 'spi.der: long-i',
    applies: ({ spelling }) => spelling === 'i:AY',
    row: 'i-long-closed',
  },
  {
    name: 'long o at the end of its syllable',
    example: 'ro.bot: long-o',
    counterExample: 'cold: o-long-closed',
    applies: ({ spelling, open }) => spelling === 'o:OW' && open,
    row: 'long-o',
  },
  {
    name: 'long o in a closed syllable',
    example: 'cold: o-long-closed',
    counterExample: 'ro.bot: long-o',
    applies: ({ spelling }) => spelling === 'o:OW',
    row: 'o-long-closed',
  },
  {
    name: 'e before r, said ee',
    example: 'he.ro: long-e',
    counterExample: 'pret.ty: irregular',
    applies: (place) => place.spelling === 'e:IH' && isBeforeR(place),
    row: 'long-e',
  },
  {
    name: 'e elsewhere, said as short i, is irregular',
    example: 'pret.ty: irregular',
    counterExample: 'he.ro: long-e',
    applies: ({ spelling }) => spelling === 'e:IH',
    row: IRREGULAR,
  },
  {
    name: 'a before r, said air',
    example: 'car.ry: a-air',
    counterExample: 'an.y: irregular',
    applies: (place) => place.spelling === 'a:EH' && isBeforeR(place),
    row: 'a-air',
  },
  {
    name: 'a elsewhere, said as short e, is irregular',
    example: 'an.y: irregular',
    counterExample: 'car.ry: a-air',
    applies: ({ spelling }) => spelling === 'a:EH',
    row: IRREGULAR,
  },
  {
    name: 'u before r, said oo',
    example: 'ju.ry: u-oor',
    counterExample: 'put: u-put',
    applies: (place) => place.spelling === 'u:UH' && isBeforeR(place),
    row: 'u-oor',
  },
  {
    name: 'u elsewhere, said as in put',
    example: 'put: u-put',
    counterExample: 'ju.ry: u-oor',
    applies: ({ spelling }) => spelling === 'u:UH',
    row: 'u-put',
  },
  {
    name: 'weak e at the end of a first syllable',
    example: 'be.gin: weak-e',
    counterExample: 'kit.ten: schwa-e',
    applies: ({ spelling, open, firstSyllable }) => /^e:[AI]X$/.test(spelling) && open && firstSyllable,
    row: 'weak-e',
  },
  {
    name: 'weak e elsewhere',
    example: 'kit.ten: schwa-e',
    counterExample: 'be.gin: weak-e',
    applies: ({ spelling }) => /^e:[AI]X$/.test(spelling),
    row: 'schwa-e',
  },
  {
    name: 'or after w, said er',
    example: 'worm: or-er',
    counterExample: 'doc.tor: or-weak',
    applies: (place) => place.spelling === 'or:ER' && isAfterW(place),
    row: 'or-er',
  },
  {
    name: 'or elsewhere, said er',
    example: 'doc.tor: or-weak',
    counterExample: 'worm: or-er',
    applies: ({ spelling }) => spelling === 'or:ER',
    row: 'or-weak',
  },
];

/** The spellings that have rules. For all other spellings the rules are skipped. */
const RULED = new Set('i:IX a:AA a:AO a:EY i:AY o:OW e:IH a:EH u:UH e:IX e:AX or:ER'.split(' '));

/**
 * Returns the catalogue row of a spelling in its place. If several rows have the same letters and sound, the rules
 * decide. Otherwise the result is the first row with these letters and sound. Without such a row, the spelling is
 * irregular.
 */
export function namePattern(letters: string, sound: string, around: Surroundings): PatternId {
  const spelling = `${letters}:${sound}`;
  const rows = rowsOf.get(spelling);
  if (!rows) return IRREGULAR;
  const row = RULED.has(spelling) ? findRule(PATTERN_RULES, { ...around, spelling })?.row : undefined;
  return row === IRREGULAR || spelling === 'i:IX' || (row && rows.includes(row)) ? row! : rows[0]!;
}
