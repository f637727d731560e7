import type { Picker } from '../picker.ts';
import type { ListedWord } from './listed-words.ts';
import type { FindSteps, OneStep } from './one-unit-apart.ts';

/** The ways in which the next word may differ. */
export type StepKinds = ReadonlySet<OneStep['kind']>;

const STARTS = 12;
const TRIES_EACH = 600;
/** The number of common words to try, of all that may follow. */
const NEXT = 6;
/** At most one in `OFF_ONE_IN` words, and at most `MOST_OFF` in all, may lack the pattern. */
const OFF_ONE_IN = 3;
const MOST_OFF = 2;

/**
 * Finds a chain of words, each one unit away from the word before: pin pan pen hen.
 * - No word comes twice, and no two steps in a row are at the same place (pin, bin, tin is a see-saw).
 * - The chain begins and ends with an example. At most one in three words, and two in all, are no examples, so that the
 * chain keeps to the pattern.
 * - No word of `without` is in the chain.
 * The chain is shorter than asked for where the words do not give more.
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
  for (const start of picker.shuffle(picker.pickEarly(starts, STARTS))) {
    const chain = grow(start);
    if (chain.length > best.length) best = chain;
    if (best.length === length) break;
  }
  return best;

  function grow(start: ListedWord): ListedWord[] {
    const chain = [start];
    const families = new Set([start.family]);
    let longest = [start];
    let tries = TRIES_EACH;
    const follow = (lastPlace: number, off: number): boolean => {
      const keepsTo = isExample.has(chain.at(-1)!) && off * OFF_ONE_IN <= chain.length;
      if (keepsTo && chain.length > longest.length) longest = [...chain];
      if (chain.length === length) return keepsTo;
      for (const { to, place } of nextSteps(chain.at(-1)!, lastPlace)) {
        const offNow = off + (isExample.has(to) ? 0 : 1);
        if (families.has(to.family) || offNow > MOST_OFF || offNow * OFF_ONE_IN > length) continue;
        if (--tries < 0) return false;
        chain.push(to);
        families.add(to.family);
        if (follow(place, offNow)) return true;
        chain.pop();
        families.delete(to.family);
      }
      return false;
    };
    follow(-1, 0);
    return longest;
  }

  function nextSteps(from: ListedWord, lastPlace: number): OneStep[] {
    const steps = findSteps(from, kinds).filter(({ to, place }) => place !== lastPlace && !without.has(to));
    const withPattern = steps.filter(({ to }) => isExample.has(to));
    const others = steps.filter(({ to }) => !isExample.has(to));
    const mixed = [withPattern, others].map((some) => picker.shuffle(picker.pickEarly(some, NEXT)));
    // The chain leaves the pattern and returns now and then; otherwise it would have one vowel from end to end.
    return picker.below(3) > 0 ? mixed.flat() : mixed.reverse().flat();
  }
}
