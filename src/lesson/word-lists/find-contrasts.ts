import { catalogue, isBlend } from '../../analyze/index.ts';
import type { PatternId } from '../../analyze/types.ts';
import type { Picker } from '../picker.ts';
import { differInOneSound, isAffixUnit, isOneSound, isVowel, patternOf, soundOf } from './list-units.ts';
import type { ListedWord } from './listed-words.ts';
import type { FindSteps, OneStep } from './one-unit-apart.ts';

/** For each pair wanted, the number of best pairs to choose from. */
const CHOSEN_FROM = 4;
const ENOUGH = 4;

/**
 * The point of a pair, which decides the adult's question.
 * - `sound`: one sound for another (ship chip)
 * - `more`: one more sound (slip lip)
 * - `added`: an ending or a beginning (jumped jump)
 * - `changed`: an ending that changes its base (ponies pony)
 * - `base`: two bases with the same ending (hopping hoping)
 */
const KINDS = ['base', 'more', 'changed', 'added', 'sound'] as const;
export type ContrastKind = (typeof KINDS)[number];

/** Pairs that one question fits. The first word of each pair has the pattern. */
export interface Contrasts {
  readonly kind: ContrastKind;
  readonly pairs: readonly (readonly [ListedWord, ListedWord])[];
}

/**
 * The kinds that show a blend or a spelling change best. They are taken where there are enough such pairs. Otherwise
 * the kind with the most pairs is taken.
 */
const BEST: readonly ContrastKind[] = ['base', 'more'];

/**
 * Finds pairs of words of one kind that are one unit apart. The first word has the pattern, and the second does not:
 * hope hop, ship chip; for a blend slip lip, for an ending jumped jump. Each word comes once, and children know each
 * word. The pairs with the most similar spellings and sounds come first.
 */
export function findContrasts(
  examples: readonly ListedWord[],
  focus: ReadonlySet<PatternId>,
  findSteps: FindSteps,
  count: number,
  picker: Picker,
): Contrasts {
  const pairs = examples
    .filter(({ plain }) => plain)
    .flatMap((from) =>
      findSteps(from, CHANGE_OR_DROP)
        .filter(({ to }) => to.plain)
        .flatMap((step) => {
          const shows = whatShows(from, step, focus);
          return shows === null ? [] : [{ from, ...step, shows, unlike: unlikeness(from, step) }];
        }),
    );
  pairs.sort((a, b) => a.unlike - b.unlike || a.from.order + a.to.order - b.from.order - b.to.order);
  const ofKind = (kind: ContrastKind): typeof pairs => {
    const used = new Set<ListedWord>();
    return pairs.filter(({ from, to, shows }) => {
      if (shows !== kind || used.has(from) || used.has(to)) return false;
      used.add(from).add(to);
      return true;
    });
  };
  const kinds = KINDS.map((kind) => ({ kind, single: ofKind(kind) }));
  const most = kinds.toSorted((a, b) => b.single.length - a.single.length)[0]!;
  const best = kinds.find(({ kind, single }) => BEST.includes(kind) && single.length >= ENOUGH) ?? most;
  const { kind, single } = best;
  // Pairs of sounds that nobody mistakes are used only where there are no others.
  const furthest = single[Math.min(single.length, ENOUGH) - 1]?.unlike ?? 0;
  const likest = single.filter(({ unlike }) => unlike <= furthest).slice(0, count * CHOSEN_FROM);
  return { kind, pairs: picker.pickEarly(likest, count).map(({ from, to }) => [from, to]) };
}

const CHANGE_OR_DROP: ReadonlySet<OneStep['kind']> = new Set(['change', 'drop']);

/**
 * Returns the kind of pair that two words one step apart make, for the patterns that only the first word has. Returns
 * null where the words show none of these patterns.
 */
function whatShows(
  from: ListedWord,
  { to, place, kind }: OneStep,
  focus: ReadonlySet<PatternId>,
): ContrastKind | null {
  const lost = from.requires.filter((id) => focus.has(id) && !WHOLE.has(familyOf.get(id)!));
  if (lost.length === 0 || lost.some((id) => to.requires.includes(id))) return null;
  const families = lost.map((id) => familyOf.get(id)!);
  if (kind === 'drop') return shownByDropped(from, from.units[place]!, families);
  if (isAffixUnit(from.units[place]!) || !differInOneSound(from.units[place]!, to.units[place]!)) return null;
  // An ending alone does not tell two bases apart, but the spelling change in hopping and hoping does.
  if (from.built || to.built) {
    const showsBase = from.built && to.built && families.includes('spelling change') && isOtherChange(to);
    return showsBase ? 'base' : null;
  }
  if (families.some(isEnded)) return null;
  const isUnit = lost.some((id) => from.units.some((each) => patternOf(each) === id));
  return !isUnit || lost.includes(patternOf(from.units[place]!)) ? 'sound' : null;
}

/** The kind of pair that a word makes with the same word without one of its units: slip lip, jumped jump. */
function shownByDropped(from: ListedWord, unit: string, families: readonly string[]): ContrastKind | null {
  if (isAffixUnit(unit)) {
    if (families.includes('spelling change')) return 'changed';
    return families.some(isEnded) ? 'added' : null;
  }
  const showsBlend = families.some((family) => isBlend({ family }));
  return showsBlend && !from.built && isOneSound(unit) ? 'more' : null;
}

const familyOf = new Map(catalogue.map(({ id, family }) => [id, family]));
/** Families of patterns that are not one unit of a word, so that a pair cannot show them. */
const WHOLE = new Set(['syllable type', 'syllable count', 'final syllable', 'consonant-le', 'schwa']);

/** Returns whether patterns of a family show when a word is compared with the same word without its ending or beginning. */
function isEnded(family: string): boolean {
  return /^(suffix|prefix|spelling change|word kind)$/.test(family);
}

/** Returns whether a word has a spelling change, as hoping has beside hopping. */
function isOtherChange({ requires }: ListedWord): boolean {
  return requires.some((id) => familyOf.get(id) === 'spelling change');
}

/**
 * Returns how unlike the two words of a pair are. hop hope, ship sip and slip lip are alike. The changed units of bit
 * boat share no letter, and neither do the changed units of shop mop. For hopping, hoping is nearer than hop.
 */
function unlikeness(from: ListedWord, { to, place, kind }: OneStep): number {
  if (kind === 'drop') return isOtherChange(from) ? 1 : 0;
  const [a, b] = [from.units[place]!, to.units[place]!];
  const letters = lettersOf(b);
  if ([...lettersOf(a)].some((letter) => letters.includes(letter))) return 0;
  if (isVowel(a)) return 1;
  return NEAR.some((sounds) => sounds.has(soundOf(a)) && sounds.has(soundOf(b))) ? 0 : 2;
}

/**
 * Consonants that are easily mistaken for one another. They are made in one place, or one has voice and the other has
 * none (common practice, no source).
 */
const NEAR = [
  'S SH Z TH',
  'SH CH JH',
  'F V TH',
  'T D TH DH',
  'P B',
  'K G',
  'M N NG',
  'V B',
  'W V',
  'L R',
].map((sounds) => new Set(sounds.split(' ')));

/** The letters that a pattern is named for: short-a, a_e, ow-long-o. */
function lettersOf(unit: string): string {
  return patternOf(unit)
    .replace(/^(short|long|soft|schwa)-/, '')
    .replace(/-.*|_.*/, '');
}
