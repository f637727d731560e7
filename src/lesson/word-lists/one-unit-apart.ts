import { asHeard } from './as-heard.ts';
import { isAffixUnit, isVowel } from './list-units.ts';
import type { ListedWord } from './listed-words.ts';

/** The change of one unit that turns one word into another. */
export interface OneStep {
  readonly to: ListedWord;
  /** Index of the unit that is changed or removed, or before which a unit is added. */
  readonly place: number;
  readonly kind: 'change' | 'add' | 'drop';
}

/**
 * Returns the words one unit apart from a word, in the order of the list. Words that sound the same (sail, sale) are
 * skipped.
 */
export type FindSteps = (from: ListedWord, kinds?: ReadonlySet<OneStep['kind']>) => OneStep[];

const EVERY: ReadonlySet<OneStep['kind']> = new Set(['change', 'add', 'drop']);

/**
 * Finds the words one unit apart: hop and hope (o, o_e), ship and chip (sh, ch), slip and lip (s dropped), hopping and
 * hoping. Units count, not letters: back and bake are two units apart (a, a_e and ck, k).
 */
export function createFindSteps(words: readonly ListedWord[]): FindSteps {
  const whole = new Map<string, ListedWord[]>();
  const without = new Map<string, { to: ListedWord; place: number }[]>();
  for (const to of words) {
    put(whole, to.units.join(' '), to);
    to.units.forEach((_, place) => {
      put(without, leaveOut(to.units, place, '*'), { to, place });
    });
  }
  return (from, kinds = EVERY) => {
    const steps: OneStep[] = [];
    const { units } = from;
    const add = (to: ListedWord, place: number, kind: OneStep['kind']): void => {
      if (to !== from && asHeard(to.pronunciation) !== asHeard(from.pronunciation))
        steps.push({ to, place, kind });
    };
    for (let place = 0; place <= units.length; place++) {
      if (kinds.has('change') && place < units.length)
        for (const { to } of without.get(leaveOut(units, place, '*')) ?? [])
          if (isSameKind(units[place]!, to.units[place]!)) add(to, place, 'change');
      if (kinds.has('drop') && place < units.length)
        for (const to of whole.get(leaveOut(units, place, '')) ?? []) add(to, place, 'drop');
      if (kinds.has('add'))
        for (const { to } of without.get(units.toSpliced(place, 0, '*').join(' ')) ?? [])
          add(to, place, 'add');
    }
    return steps.sort((a, b) => a.to.order - b.to.order);
  };
}

/** A vowel is only replaced by a vowel, and an ending only by an ending. */
function isSameKind(a: string, b: string): boolean {
  return isVowel(a) === isVowel(b) && isAffixUnit(a) === isAffixUnit(b);
}

function leaveOut(units: readonly string[], place: number, sign: string): string {
  return (sign ? units.with(place, sign) : units.toSpliced(place, 1)).join(' ');
}

function put<V>(index: Map<string, V[]>, key: string, value: V): void {
  const values = index.get(key);
  if (values) values.push(value);
  else index.set(key, [value]);
}
