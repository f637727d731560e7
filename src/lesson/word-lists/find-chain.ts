import type { Picker } from '../picker.ts';
import type { ListedWord } from './listed-words.ts';
import type { FindSteps, OneStep } from './one-unit-apart.ts';

/** How the next word may differ. */
export type StepKinds = ReadonlySet<OneStep['kind']>;

const STARTS = 10;
const TRIES_EACH = 300;
/** Of the words that may follow, so many common ones are tried. */
const NEXT = 6;

/**
 * A chain of words, each one unit away from the one before: pin pan pen hen; none twice, no two steps in a row at the same
 * place (pin, bin, tin is a see-saw), begun with an example and with as many examples as can be found. Shorter than asked
 * for where the words do not give more. None of `without` is in it.
 */
export function findChain(
  examples: readonly ListedWord[],
  findSteps: FindSteps,
  kinds: StepKinds,
  length: number,
  picker: Picker,
  without: ReadonlySet<ListedWord> = new Set(),
): ListedWord[] {
  const isExample = new Set(examples);
  const starts = examples.filter((word) => !without.has(word));
  let best: ListedWord[] = [];
  const score = (chain: readonly ListedWord[]): number =>
    chain.length * length + chain.filter((word) => isExample.has(word)).length;
  for (const start of picker.shuffle(picker.pickEarly(starts, STARTS))) {
    const chain = grow(start);
    if (score(chain) > score(best)) best = chain;
  }
  return best;

  function grow(start: ListedWord): ListedWord[] {
    const chain = [start];
    const families = new Set([start.family]);
    let longest = [start];
    let tries = TRIES_EACH;
    const follow = (lastPlace: number): boolean => {
      if (chain.length > longest.length) longest = [...chain];
      if (chain.length === length) return true;
      for (const { to, place } of nextSteps(chain.at(-1)!, lastPlace)) {
        if (families.has(to.family)) continue;
        if (--tries < 0) return false;
        chain.push(to);
        families.add(to.family);
        if (follow(place)) return true;
        chain.pop();
        families.delete(to.family);
      }
      return false;
    };
    follow(-1);
    return longest;
  }

  function nextSteps(from: ListedWord, lastPlace: number): OneStep[] {
    const steps = findSteps(from, kinds).filter(({ to, place }) => place !== lastPlace && !without.has(to));
    const withPattern = steps.filter(({ to }) => isExample.has(to));
    const others = steps.filter(({ to }) => !isExample.has(to));
    const mixed = [withPattern, others].map((some) => picker.shuffle(picker.pickEarly(some, NEXT)));
    // Out of the pattern and back now and then, or the chain has one vowel from end to end.
    return picker.below(3) > 0 ? mixed.flat() : mixed.reverse().flat();
  }
}
