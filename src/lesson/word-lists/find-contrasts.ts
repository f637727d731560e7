import { catalogue } from '../../analyze/index.ts';
import type { PatternId } from '../../analyze/types.ts';
import type { Picker } from '../picker.ts';
import { isAffix, isVowel, patternOf } from './list-units.ts';
import type { ListedWord } from './listed-words.ts';
import type { FindSteps, OneStep } from './one-unit-apart.ts';

/** So many of the best pairs are chosen from. */
const CHOSEN_FROM = 4;
const ENOUGH = 4;

/**
 * Pairs of words one unit apart, the first with the pattern, the second without it: hope hop, ship chip; for a blend or
 * an ending also with and without a unit: slip lip, jumped jump. Each word once; the likest spellings and sounds first.
 */
export function findContrasts(
  examples: readonly ListedWord[],
  focus: ReadonlySet<PatternId>,
  findSteps: FindSteps,
  count: number,
  picker: Picker,
): [ListedWord, ListedWord][] {
  const pairs = examples.flatMap((from) =>
    findSteps(from, CHANGE_OR_DROP)
      .filter((step) => isContrast(from, step, focus))
      .map((step) => ({ from, ...step, unlike: unlikeness(from, step) })),
  );
  pairs.sort((a, b) => a.unlike - b.unlike || a.from.order + a.to.order - b.from.order - b.to.order);
  const used = new Set<ListedWord>();
  const single = pairs.filter(({ from, to }) => {
    if (used.has(from) || used.has(to)) return false;
    used.add(from).add(to);
    return true;
  });
  // Pairs of sounds that nobody mistakes only where there are no others.
  const furthest = single[Math.min(single.length, ENOUGH) - 1]?.unlike ?? 0;
  const best = single.filter(({ unlike }) => unlike <= furthest).slice(0, count * CHOSEN_FROM);
  return picker.pickEarly(best, count).map(({ from, to }) => [from, to]);
}

const CHANGE_OR_DROP: ReadonlySet<OneStep['kind']> = new Set(['change', 'drop']);

function isContrast(from: ListedWord, { to, place, kind }: OneStep, focus: ReadonlySet<PatternId>): boolean {
  const lost = from.requires.filter((id) => focus.has(id));
  if (lost.some((id) => to.requires.includes(id))) return false;
  const families = lost.map((id) => familyOf.get(id)!);
  if (families.some((family) => WHOLE.has(family))) return false;
  const unit = from.units[place]!;
  if (kind === 'drop') return families.some(isAffix(unit) ? isEnded : isBlend);
  if (isAffix(unit)) return false;
  const isUnit = lost.some((id) => from.units.some((each) => patternOf(each) === id));
  if (isUnit) return lost.includes(patternOf(unit));
  return !families.some(isEnded) || isOtherChange(to);
}

const familyOf = new Map(catalogue.map(({ id, family }) => [id, family]));
/** What is no one unit of a word: a pair cannot show it. */
const WHOLE = new Set(['syllable type', 'syllable count', 'final syllable', 'consonant-le', 'schwa']);

function isBlend(family: string): boolean {
  return family.endsWith(' blend');
}

/** What shows beside the word without its ending or beginning. */
function isEnded(family: string): boolean {
  return /^(suffix|prefix|spelling change|word kind)$/.test(family);
}

/** hoping, beside hopping. */
function isOtherChange({ requires }: ListedWord): boolean {
  return requires.some((id) => familyOf.get(id) === 'spelling change');
}

/** hop hope, ship sip and slip lip are alike; bit boat share no letter, shop mop no more. Of hopping, hoping is nearer than hop. */
function unlikeness(from: ListedWord, { to, place, kind }: OneStep): number {
  if (kind === 'drop') return isOtherChange(from) ? 1 : 0;
  const [a, b] = [from.units[place]!, to.units[place]!];
  const letters = lettersOf(b);
  if ([...lettersOf(a)].some((letter) => letters.includes(letter))) return 0;
  if (isVowel(a)) return 1;
  return NEAR.some((sounds) => sounds.has(soundOf(a)) && sounds.has(soundOf(b))) ? 0 : 2;
}

/** Consonants that are easily heard for one another: made in one place, or with voice and without (common practice, no source). */
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

function soundOf(unit: string): string {
  return unit.slice(unit.indexOf(':') + 1);
}

/** Of short-a, a_e, ow-long-o: the letters the pattern is named for. */
function lettersOf(unit: string): string {
  return patternOf(unit)
    .replace(/^(short|long|soft|schwa)-/, '')
    .replace(/-.*|_.*/, '');
}
