import { coarseRows } from '../catalogue/catalogue.ts';
import { pairSpellings } from '../catalogue/pair-spellings.ts';
import type { Pattern, PatternId } from '../types.ts';
import { IRREGULAR } from './irregular.ts';

/** What is around a spelling and decides between rows with the same letters and sound. */
export interface Surroundings {
  readonly before: { readonly letters: string; readonly sound: string } | undefined;
  readonly after: { readonly letters: string; readonly sound: string } | undefined;
  /** Its syllable ends with it. */
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

/** True when the catalogue has the spelling (ai as in rain), false for the ai of said. */
export function isRegular(letters: string, sound: string): boolean {
  return rowsOf.has(`${letters}:${sound}`);
}

/** The row of an ending or beginning, by its letters and, where rows differ, its sound: -ed in planted. */
export function nameAffix(role: 'prefix' | 'suffix', letters: string, sound: string): PatternId {
  const rows = role === 'prefix' ? prefixRows : suffixRows;
  return (
    rows.get(`${letters}:${sound}`)?.[0] ??
    rows.get(letters)?.[0] ??
    rowsOf.get(`${letters}:${sound}`)?.[0] ??
    IRREGULAR
  );
}

/**
 * The catalogue row of a spelling in its place.
 *
 * One letter and sound may have several rows: a in ball, swan and pasta; i in spider (open) and child; or in
 * worm and doctor; e in begin and kitten; the weak i of helicopter (open) is a schwa row, that of muffin short i.
 */
export function namePattern(letters: string, sound: string, around: Surroundings): PatternId {
  const rows = rowsOf.get(`${letters}:${sound}`);
  if (!rows) return IRREGULAR;
  if (letters === 'i' && sound === 'IX') return around.open ? 'schwa-i' : 'short-i';
  const pick = (id: PatternId): PatternId => (rows.includes(id) ? id : rows[0]!);
  switch (`${letters}:${sound}`) {
    case 'a:AA':
    case 'a:AO':
      if (/^ll?$/.test(around.after?.letters ?? '')) return pick('a-before-l');
      if (/(^|\.)W$/.test(around.before?.sound ?? '')) return pick('a-after-w');
      return sound === 'AA' ? pick('a-ah') : IRREGULAR;
    case 'a:EY':
      return pick(around.open ? 'long-a' : 'a-long-closed');
    case 'i:AY':
      return pick(around.open ? 'long-i' : 'i-long-closed');
    case 'o:OW':
      return pick(around.open ? 'long-o' : 'o-long-closed');
    case 'e:IH':
      return around.after?.letters[0] === 'r' ? pick('long-e') : IRREGULAR;
    case 'a:EH':
      return around.after?.letters[0] === 'r' ? pick('a-air') : IRREGULAR;
    case 'u:UH':
      return pick(around.after?.letters[0] === 'r' ? 'u-oor' : 'u-put');
    case 'e:IX':
    case 'e:AX':
      return pick(around.open && around.firstSyllable ? 'weak-e' : 'schwa-e');
    case 'or:ER':
      return pick(/(^|\.)W$/.test(around.before?.sound ?? '') ? 'or-er' : 'or-weak');
    default:
      return rows[0]!;
  }
}
