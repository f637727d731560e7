import { countVowels, hasVowel } from '../alignment/sounds.ts';
import type { BuiltWord } from '../build/built-word.ts';
import type { Syllable, SyllableType } from '../types.ts';
import { type AffixSyllables, affixSyllables, joinsDivision } from './affix-syllables.ts';
import { classifySyllable } from './classify-syllable.ts';
import type { PlacedSpelling } from './cut-place.ts';
import { cutBetween } from './cut-rules.ts';
import divisions from './divisions.json' with { type: 'json' };

const VOWEL_LETTER = /[aeiouy]/;

/**
 * The offsets where the syllables start in words that no rule divides as dictionaries do. divisions.json lists these
 * words by hand, each with its reason.
 */
const BY_HAND = new Map(
  divisions.map(({ division }) => {
    const pieces = division.split('.');
    return [pieces.join(''), pieces.map((_, i) => pieces.slice(0, i).join('').length)];
  }),
);

/** Spellings that are divided together, and the fixed syllables of an affix. */
interface Zone {
  readonly spellings: PlacedSpelling[];
  readonly fixed: AffixSyllables | null;
}

export interface DividedWord {
  readonly syllables: readonly Syllable[];
  /** Offset in the word where each syllable starts. */
  readonly starts: readonly number[];
}

/**
 * Divides a word into syllables and names their types. The parts of a word stay whole (pan.cake, un.zip, call.ing). A
 * doubled letter is split (hop.ping), and Latin endings are divided together with their base (mas.sive).
 * `starts` comes from `placeSpellings` for the same word.
 */
export function divideWord(word: string, built: BuiltWord, starts: readonly number[]): DividedWord {
  const zones = findZones(built, starts);
  const cuts = new Map<number, SyllableType | null>();
  const nuclei: PlacedSpelling[] = [];
  for (const [z, { spellings, fixed }] of zones.entries()) {
    const first = spellings[0];
    if (!first) continue;
    let at = first.start;
    if (z > 0) at = moveOver(zones[z - 1]!, at, first);
    if (fixed) {
      for (const i of fixed.lengths.keys()) {
        cuts.set(i === 0 ? at : first.start + sum(fixed.lengths.slice(0, i)), fixed.types[i]!);
      }
      continue;
    }
    if (!spellings.some(isNucleus)) continue;
    cuts.set(at, null);
    let latest = at;
    let previous = -1;
    for (const [i, spelling] of spellings.entries()) {
      if (!isNucleus(spelling) && !(isBareLe(spelling) && i + 1 < spellings.length)) continue;
      nuclei.push(spelling);
      if (previous >= 0) {
        const between = spellings.slice(previous + 1, i);
        latest = cutBetween(
          spellings[previous]!,
          between,
          spelling,
          nuclei.length === 2,
          spellings[previous - 1]?.letters,
        );
        cuts.set(latest, null);
      }
      const inner = innerSyllables(spelling);
      if (inner) {
        cuts.set(latest, inner.types[0]!);
        cuts.set(spelling.start + inner.lengths[0]!, inner.types[1]!);
      }
      previous = i;
    }
  }
  if (cuts.size === 0) cuts.set(0, 'other');
  return judgeSyllables(
    word,
    zones.flatMap((zone) => zone.spellings),
    cuts,
  );
}

/**
 * Returns the syllables between the cuts by rule, or between the cuts made by hand. A syllable whose cut has no type
 * gets its type from its letters.
 */
function judgeSyllables(
  word: string,
  spellings: readonly PlacedSpelling[],
  cuts: ReadonlyMap<number, SyllableType | null>,
): DividedWord {
  const byRule = [...cuts.keys()].sort((a, b) => a - b).filter((at, i) => i === 0 || at < word.length);
  const byHand = BY_HAND.get(word);
  const order = byHand ?? byRule;
  // A syllable cut by hand keeps the type of the syllable by rule that ends at the same place.
  const typeUntil =
    byHand && new Map(byRule.map((start, i) => [byRule[i + 1] ?? word.length, cuts.get(start)]));
  const syllables = order.map((start, i): Syllable => {
    const end = order[i + 1] ?? word.length;
    const inside = spellings.filter((one) => one.start < end && one.end > start);
    return {
      text: word.slice(start, end),
      type: (typeUntil ? typeUntil.get(end) : cuts.get(start)) ?? classifySyllable(inside, start, end, word),
    };
  });
  return { syllables, starts: order };
}

/**
 * Returns where an ending that is a syllable starts. A doubled letter, a silent t, or the l of juggle with its
 * consonant goes over to the ending: hop.ping, fas.ten, jug.gling.
 */
function moveOver(before: Zone, at: number, first: PlacedSpelling): number {
  const last = before.spellings.at(-1);
  if (!last || before.fixed || !/^[aeiouy]/.test(first.letters)) return at;
  if (last.letters !== last.spells && /(.)\1$/.test(last.letters)) return at - 1;
  // ba.si.cal.ly divides like mu.si.cal
  if (last.letters === 'c' && first.letters === 'ally') return at - 1;
  if (last.letters === 'st' && last.sound === 'S') return at - 1;
  const other = before.spellings.at(-2);
  if (last.letters === 'l' && other && !hasVowel(other.sound)) {
    return /^(ck|x)$/.test(other.letters) ? at - 1 : other.end - 1;
  }
  return at;
}

function findZones(built: BuiltWord, starts: readonly number[]): Zone[] {
  const zones: Zone[] = [];
  let index = 0;
  for (const { role, spellings } of built.parts) {
    const placed = spellings.map((one): PlacedSpelling => {
      const at = index++;
      const spells = one.spells ?? one.letters;
      const ending = role === 'suffix' || role === 'clitic';
      return {
        letters: one.letters,
        sound: one.sound,
        spells,
        start: starts[at]!,
        end: starts[at + 1]!,
        ending,
      };
    });
    const last = zones.at(-1);
    if (role === 'base') {
      zones.push({ spellings: placed, fixed: null });
      // sleep.i.ness divides like sleep.y
      if (spellings.length > 1 && spellings.at(-1)!.wasSuffix)
        zones.push({ spellings: [placed.pop()!], fixed: affixSyllables('suffix', 'y', 'IY') });
      continue;
    }
    const affix = placed[0]!;
    const fixed = role === 'clitic' ? cliticSyllable(affix) : affixSyllables(role, affix.spells, affix.sound);
    const before = last?.spellings.at(-1)?.letters ?? '';
    const joins =
      role === 'clitic'
        ? !fixed
        : role === 'suffix' && (!fixed || (joinsDivision(affix.spells, before) && !keepsWhole(affix, built)));
    if (joins && last && !last.fixed) last.spellings.push(...placed);
    else zones.push({ spellings: placed, fixed });
  }
  return takesLe(built) ? giveConsonantToLy(zones, built) : zones;
}

/** Returns whether the base stays whole because -ous does not change it: per.il.ous, dan.ger.ous; not fa.mous. */
function keepsWhole({ spells }: PlacedSpelling, { affixes }: BuiltWord): boolean {
  return spells === 'ous' && affixes.some(({ text, change }) => text === spells && change === 'none');
}

/** Returns whether -ly replaces -le and -ly together: simply, terribly; not slowly. */
function takesLe({ affixes }: BuiltWord): boolean {
  const outer = affixes.at(-1);
  return outer?.text === 'ly' && outer.change === 'drop-e';
}

/**
 * Moves the consonant of -le to the syllable of -ly, as it was in the syllable of -le: sim.ply, ter.ri.bly,
 * com.fort.a.bly; not true + ly, whole + ly.
 */
function giveConsonantToLy(zones: readonly Zone[], { affixes }: BuiltWord): Zone[] {
  const [base, ly] = zones.slice(-2);
  const consonant = base?.spellings.at(-1);
  if (!base || !ly?.fixed || base.fixed || !/^[bdfgkptz]$/.test(consonant?.letters ?? '')) return [...zones];
  const ending: Zone = { spellings: [consonant!, ...ly.spellings], fixed: { lengths: [3], types: ['open'] } };
  const rest = base.spellings.slice(0, -1);
  const vowel = rest.at(-1);
  const kept = zones.slice(0, -2);
  if (!vowel || !/^[ai]$/.test(vowel.letters) || !affixes.some(({ text }) => text === `${vowel.letters}ble`))
    return [...kept, { spellings: rest, fixed: null }, ending];
  const linking: Zone = { spellings: [vowel], fixed: { lengths: [1], types: ['open'] } };
  return [...kept, { spellings: rest.slice(0, -1), fixed: null }, linking, ending];
}

/** Returns the syllable after an apostrophe if its vowel is heard but has no letter: is.n't, it.'ll, boss.'s; not can't. */
function cliticSyllable({ letters, sound }: PlacedSpelling): AffixSyllables | null {
  return hasVowel(sound) ? { lengths: [letters.length], types: ['other'] } : null;
}

/** Returns the syllables of a unit inside a zone that has two syllables: -able as a.ble, -ity as i.ty. */
function innerSyllables({ spells, sound }: PlacedSpelling): AffixSyllables | null {
  if (countVowels(sound) < 2) return null;
  const known = affixSyllables('suffix', spells, sound);
  return known && known.lengths.length === 2 ? known : null;
}

/**
 * Returns whether a spelling is the l that remains of consonant-le before -ed: strug.gled. The l of strug.gling is no
 * syllable.
 */
function isBareLe({ letters, spells, sound }: PlacedSpelling): boolean {
  return letters === 'l' && spells === 'le' && hasVowel(sound);
}

/**
 * Returns whether a spelling makes a syllable. Such a spelling has a vowel sound and a vowel letter (not the m of
 * prism).
 */
function isNucleus({ letters, sound }: PlacedSpelling): boolean {
  return hasVowel(sound) && VOWEL_LETTER.test(letters);
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, one) => total + one, 0);
}
