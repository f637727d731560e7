import { catalogue, coarseRows } from '../catalogue/catalogue.ts';
import type { PatternId } from '../types.ts';

/** The side of the letters on which the word continues, as a hyphen shows: `-ed`, `un-`. */
export type Mark = 'suffix' | 'prefix' | 'none';

/** The possible patterns of letters, and their usual ones if the context tells nothing more. */
export interface Spelling {
  readonly letters: string;
  readonly candidates: readonly PatternId[];
  readonly usual: readonly PatternId[];
  /** Whether the usual meaning is the only sensible one. */
  readonly sure: boolean;
}

/** Rimes of a vowel and a nasal, taught as units. */
export const rimes: Readonly<Record<string, readonly PatternId[]>> = Object.fromEntries(
  ['ang', 'ing', 'ong', 'ung', 'ank', 'ink', 'onk', 'unk'].map((letters) => [letters, [`rime-${letters}`]]),
);

/** Letters that are two patterns at once. No example can mean only one of the two. */
export const composites: Readonly<Record<string, readonly PatternId[]>> = {
  ies: ['change-y-to-i', 'suffix-es'],
  ied: ['change-y-to-i', 'suffix-ed-d'],
  ves: ['change-f-to-v'],
  stle: ['st', 'consonant-le'],
};

/**
 * Letters that are longer or shorter than the pattern they teach. The `ank` of bank teaches its n, and `ble` teaches
 * -le.
 */
const aliases: Readonly<Record<string, readonly PatternId[]>> = {
  nk: ['n-ng'],
  ...rimes,
  ...composites,
  all: ['a-before-l'],
  alk: ['al-aw'],
  alt: ['a-before-l'],
  wa: ['a-after-w'],
  qua: ['a-after-w'],
  war: ['ar-or'],
  quar: ['ar-or'],
  wor: ['or-er'],
  ild: ['i-long-closed'],
  ind: ['i-long-closed'],
  old: ['o-long-closed'],
  olt: ['o-long-closed'],
  oll: ['o-long-closed'],
  ost: ['o-long-closed'],
  el: ['final-el', 'schwa-e'],
  il: ['final-il', 'schwa-i'],
  al: ['final-al'],
  ent: ['suffix-ent', 'final-ent'],
  sph: ['start-other'],
  dw: ['start-other'],
  q: ['qu'],
  ci: ['soft-c'],
  cy: ['soft-c'],
  gi: ['soft-g'],
  gy: ['soft-g'],
  "'s": ['possessive', 'contraction-is'],
  "'m": ['contraction'],
  "'d": ['contraction-would'],
  "s'": ['possessive'],
  "n't": ['contraction-not'],
  "'ll": ['contraction-will'],
  "'re": ['contraction-are'],
  "'ve": ['contraction-have'],
  // Prefixes that count only for groups that name them.
  ...Object.fromEntries(
    catalogue.flatMap(({ id, finer }) =>
      finer !== undefined && id.startsWith('prefix-') ? [[id.slice('prefix-'.length), [id]]] : [],
    ),
  ),
  // Silent letters alone. They are used only if the text speaks of silent letters.
  k: ['kn'],
  w: ['wr'],
  g: ['gn'],
  b: ['mb'],
  l: ['l-silent'],
  ...Object.fromEntries([...'bcdfgkptz'].map((c) => [`${c}le`, ['consonant-le']])),
};

/** The usual patterns of letters with several, if the text says nothing else. All other patterns are rarer. */
const usual: Readonly<Record<string, readonly PatternId[]>> = {
  ...rimes,
  ing: ['suffix-ing'],
  a: ['short-a'],
  e: ['short-e'],
  i: ['short-i'],
  o: ['short-o'],
  u: ['short-u'],
  y: ['y'],
  ss: ['ss'],
  th: ['th', 'th-voiced'],
  u_e: ['u_e-oo', 'u_e-yoo'],
  ou: ['ou-ow'],
  ue: ['ue-oo', 'ue-yoo'],
  ew: ['ew-oo', 'ew-yoo'],
  sion: ['sion-sh', 'sion-zh'],
  ous: ['ous', 'suffix-ous'],
  age: ['age', 'suffix-age'],
  ed: ['suffix-ed-t', 'suffix-ed-d', 'suffix-ed-id'],
  el: ['final-el'],
  il: ['final-il'],
  le: ['consonant-le'],
  sc: ['start-sc'],
  sw: ['start-sw'],
  tw: ['start-tw'],
  lk: ['end-lk'],
  lm: ['end-lm'],
  lf: ['end-lf'],
  ...composites,
};

/** Letters that are equally common in several senses, with the patterns to offer as a guess. */
const open: Readonly<Record<string, readonly PatternId[]>> = {
  ow: ['ow-long-o', 'ow-ow'],
  oo: ['oo-moon', 'oo-book'],
  ea: ['ea-long-e'],
  ie: ['ie-long-i'],
  ei: ['ei-long-a'],
  ey: ['ey-long-e'],
  ear: ['ear-eer'],
  ere: ['ere-eer'],
  our: ['our-or'],
  al: ['al-aw'],
  gh: ['gh-g'],
  ough: ['ough-aw', 'ough-long-o', 'ough-oo', 'ough-ow'],
  st: ['start-st', 'end-st'],
  sk: ['start-sk', 'end-sk'],
  sp: ['start-sp', 'end-sp'],
  ing: ['suffix-ing'],
  re: ['prefix-re'],
  de: ['prefix-de'],
  en: ['suffix-en'],
};

/** The usual patterns of letters with a hyphen, if several endings have this spelling. */
const markedUsual: Readonly<Record<string, readonly PatternId[]>> = {
  s: ['suffix-s'],
  y: ['suffix-y', 'y-long-e', 'y-long-i'],
  tion: ['tion'],
  al: ['suffix-al'],
  el: ['final-el'],
  il: ['final-il'],
  ent: ['suffix-ent'],
};

/** Affixes that are also words. They are beginnings or endings only with a hyphen or under a heading for affixes. */
const words = new Set(
  [
    'ship like some wise ward wards hood able ant an ate in im out up over under mid fore super auto co a',
    'con com ex pro per ad uni teen less ess an ee inter anti semi multi tri bi up age or en em ic al th y s es er est ward like',
  ].flatMap((row) => row.split(' ')),
);

const endings = new Set(['suffix', 'final syllable', 'consonant-le', 'final blend']);
const beginnings = new Set(['prefix', 'initial blend']);
const affixes = new Set(['suffix', 'prefix']);
const familyOf = new Map(catalogue.map(({ id, family }) => [id, family]));

const patternsOf = new Map<string, PatternId[]>();
for (const { id, letters } of coarseRows) {
  // The letters with a silent e at the end (giraffe) look like words such as "the". Nobody lists them.
  if (id === 'silent-e') continue;
  for (const spelling of letters.split(' ')) {
    if (spelling !== '') patternsOf.set(spelling, [...(patternsOf.get(spelling) ?? []), id]);
  }
}
for (const [letters, ids] of Object.entries(aliases)) {
  patternsOf.set(letters, [...new Set([...(patternsOf.get(letters) ?? []), ...ids])]);
}

/**
 * Returns the patterns of letters, or null if they are no spelling of the catalogue.
 * `er` is the r-controlled vowel of fern, and `-er` is the ending of helper. Bare `ship` is a word, and `-ship` is an
 * ending. With `affix` this distinction is dropped: under "suffixes", `ship` is an ending too.
 */
export function findSpelling(letters: string, mark: Mark, affix = false): Spelling | null {
  const rime = mark === 'suffix' && !affix ? rimeOf(letters) : null;
  if (rime !== null) return rime;
  const listed = patternsOf.get(letters);
  if (listed === undefined) return null;
  // `-il` is no prefix, `re-` no ending.
  const other = mark === 'suffix' ? 'prefix' : mark === 'prefix' ? 'suffix' : '';
  const fitting = listed.filter((id) => familyOf.get(id) !== other);
  if (fitting.length === 0 && !affix) return null;
  const all = fitting.length > 0 ? fitting : listed;
  if (letters === 'th' && mark === 'suffix' && !affix) return spelling(letters, all, usual.th!, false);
  const composite = composites[letters];
  if (composite !== undefined) return spelling(letters, all, composite, true);
  const marked = mark === 'none' || (letters === 'th' && !affix) ? [] : onSide(all, mark);
  if (marked.length > 0) {
    const known = markedUsual[letters];
    const own = known?.filter((id) => marked.includes(id)) ?? [];
    const meant = own.length > 0 ? own : marked;
    return spelling(letters, [...new Set([...marked, ...(known ?? [])])], meant, letters !== 'y');
  }
  if (!affix && mark === 'none' && words.has(letters)) {
    const plain = all.filter((id) => !affixes.has(familyOf.get(id)!));
    if (plain.length === 0) return null;
    return spelling(letters, all, usual[letters] ?? open[letters] ?? plain.slice(0, 1), !(letters in open));
  }
  return spelling(letters, all, usual[letters] ?? open[letters] ?? all.slice(0, 1), !(letters in open));
}

/** Families of patterns that an unlisted ending may contain: the ai of mountain. */
const inEndings = /vowel|schwa|final syllable/;

/**
 * Reads an ending that is no spelling itself, if its examples tell which vowel it contains: `-ain (mountain)`. Returns
 * null for other letters.
 */
export function looseEnding(letters: string): Spelling | null {
  const [, vowel = ''] = /^([aeiouy]{1,3})[a-z]{1,4}$/.exec(letters) ?? [];
  if (vowel === '') return null;
  const candidates = coarseRows
    .filter((row) => inEndings.test(row.family))
    .filter((row) => row.letters.split(' ').includes(vowel))
    .map(({ id }) => id);
  return candidates.length === 0 ? null : spelling(letters, candidates, [], false);
}

/**
 * Returns the spelling in a family that a single letter means: ff for f, a_e for a, or all blends with l. Returns null
 * if there is none.
 */
export function familyMember(letter: string, family: readonly PatternId[]): Spelling | null {
  if (family.includes('ff')) return findSpelling(letter.repeat(2), 'none');
  if (family.includes('a_e')) return findSpelling(`${letter}_e`, 'none');
  const blends = family.filter((id) => {
    const [side, letters = ''] = id.split('-');
    return side === 'start'
      ? letters.length === 2 && letters.includes(letter)
      : side === 'end' && letters[0] === letter;
  });
  // "clusters with l" means bl and cl rather than lt.
  const starts = blends.filter((id) => id.startsWith('start-'));
  const meant = starts.length > 0 ? starts : blends;
  return meant.length === 0 ? null : spelling(letter, meant, meant, true);
}

/**
 * Reads an ending of a short vowel and consonants as a guess: `-at`, `-ick`. Endings such as `-ed` and `-all` have
 * another known meaning.
 */
function rimeOf(letters: string): Spelling | null {
  const [, vowel = '', rest = ''] =
    /^([aeiou])(b|c?k|d|g|m|n|p|t|x|sh|ss|ff|tch|mp|nd|nt|st|ll)$/.exec(letters) ?? [];
  const own = patternsOf.get(letters)?.some((id) => familyOf.get(id) !== 'prefix') === true;
  if (vowel === '' || (letters !== 'an' && own)) return null;
  const end = findSpelling(rest, 'none')!;
  const ids = [`short-${vowel}`, ...(end.usual.length > 1 ? [`end-${rest}`] : end.usual)];
  // The -et of basket is not a short e and t.
  const weak = catalogue.some(({ id }) => id === `final-${letters}`) ? [`final-${letters}`] : [];
  return { letters, candidates: [...ids, ...weak], usual: ids, sure: false };
}

function onSide(ids: readonly PatternId[], mark: Mark): readonly PatternId[] {
  const families = mark === 'suffix' ? endings : beginnings;
  return ids.filter((id) => families.has(familyOf.get(id)!));
}

function spelling(
  letters: string,
  candidates: readonly PatternId[],
  usualIds: readonly PatternId[],
  sure: boolean,
): Spelling {
  return { letters, candidates, usual: usualIds, sure };
}
