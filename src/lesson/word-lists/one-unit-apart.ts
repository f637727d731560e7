import { asHeard } from './as-heard.ts';
import { isAffixUnit, isVowel } from './list-units.ts';
import type { ListedWord } from './listed-words.ts';

/** How one word becomes another. */
export interface OneStep {
  readonly to: ListedWord;
  /** Which unit of the word is changed or taken away, or before which one is added. */
  readonly place: number;
  readonly kind: 'change' | 'add' | 'drop';
}

/** The words one unit apart from a word, in the order of the list; none that sounds the same (sail, sale). */
export type FindSteps = (from: ListedWord, kinds?: ReadonlySet<OneStep['kind']>) => OneStep[];

const EVERY: ReadonlySet<OneStep['kind']> = new Set(['change', 'add', 'drop']);

/**
 * Finds the words one unit apart: hop and hope (o, o_e), ship and chip (sh, ch), slip and lip (s dropped), hopping
 * and hoping. By units, not letters: back and bake are two apart (a, a_e and ck, k).
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

/** A vowel becomes a vowel, an ending another. */
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
