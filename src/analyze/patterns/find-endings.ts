import { countVowels, hasVowel } from '../alignment/sounds.ts';
import type { WordPart, WordSpelling } from '../build/built-word.ts';
import type { FinerNeed, PatternId, Unit } from '../types.ts';

/** An ending that may be taught as a unit, with the units of the word that it replaces. */
export interface FoundEnding extends FinerNeed {
  readonly units: readonly number[];
}

const SHORT: Readonly<Record<string, RegExp>> = {
  a: /^AE$/,
  i: /^I[HX]$/,
  o: /^A[AO]$/,
  u: /^AH$/,
};
/** The last letters of longer bases, and their weak vowel: vessel, signal, fossil, bucket, picnic. */
const FINALS: Readonly<Record<string, RegExp>> = {
  el: /^AX$/,
  al: /^AX$/,
  il: /^AX$/,
  et: /^(AX|IX|IH)$/,
  ic: /^(IX|IH)$/,
};

/**
 * Finds the endings in a word's bases that a group may be taught as units:
 *
 * - a, i, o, u with ng, or with n and k: hang, wing, plank; not finger, uncle, hinge
 * - all, am, an at the end of a base: small, clam, planned; not shall, camp, sand
 * - -el, -al, -il, -et, -ic, -ent at the end of a longer base: vessel, current; not hotel, event, net
 */
export function findEndings(parts: readonly WordPart[], units: readonly Unit[]): FoundEnding[] {
  const found: FoundEnding[] = [];
  let offset = 0;
  for (const { role, spellings } of parts) {
    if (role === 'base') findInBase(spellings, offset, units, found);
    offset += spellings.length;
  }
  return found;
}

function findInBase(
  spellings: readonly WordSpelling[],
  offset: number,
  units: readonly Unit[],
  found: FoundEnding[],
): void {
  const add = (row: PatternId, from: number, count: number, besides: readonly PatternId[] = []): void => {
    const places = Array.from({ length: count }, (_, i) => offset + from + i);
    found.push({ row, of: [...places.map((i) => units[i]!.pattern), ...besides], units: places });
  };
  for (const [i, { letters, sound }] of spellings.entries()) {
    if (!SHORT[letters]?.test(sound)) continue;
    const next = spellings[i + 1];
    const third = spellings[i + 2];
    if (next?.letters === 'ng' && next.sound === 'NG') add(`rime-${letters}ng`, i, 2);
    else if (next?.letters === 'n' && next.sound === 'NG' && third && spelt(third) === 'k')
      add(`rime-${letters}nk`, i, 3);
  }
  findAtEnd(spellings, (place) => units[offset + place]!.pattern, add);
}

function findAtEnd(
  spellings: readonly WordSpelling[],
  patternAt: (place: number) => PatternId,
  add: (row: PatternId, from: number, count: number, besides?: readonly PatternId[]) => void,
): void {
  const last = spellings.length - 1;
  const [before, end] = [spellings[last - 1], spellings[last]];
  if (!before || !end || hasVowel(end.sound)) return;
  const pattern = patternAt(last - 1);
  const pair = spelt(before) + spelt(end);
  if (pattern === 'short-a' && /^a[mn]$/.test(pair)) add(`rime-${pair}`, last - 1, 2);
  else if (pattern === 'a-before-l' && pair === 'all') add('rime-all', last - 1, 2);
  else if (FINALS[pair]?.test(before.sound) && isLonger(spellings)) add(`final-${pair}`, last - 1, 2);
  else if (pair === 'nt' && spellings[last - 2]?.letters === 'e' && isLonger(spellings)) {
    if (spellings[last - 2]!.sound === 'AX') add('final-ent', last - 2, 3, ['end-nt']);
  }
}

/** Returns the letters that a spelling has in the base alone: n for the nn of planned. */
function spelt({ letters, spells }: WordSpelling): string {
  return spells ?? letters;
}

function isLonger(spellings: readonly WordSpelling[]): boolean {
  return spellings.reduce((sum, { sound }) => sum + countVowels(sound), 0) > 1;
}
