import { type Chooser, createChooser, SURE } from '../../src/analyze/homographs/choose-reading.ts';
import { fitWeights } from '../../src/data/homographs/fit-weights.ts';
import { type Example, readExamples, readMoreExamples } from '../../src/data/homographs/read-examples.ts';

/** Scores for occurrences of homographs whose readings are both in the word table. Shares are from 0 to 1. */
export interface HomographScore {
  readonly words: number;
  readonly places: number;
  readonly micro: number;
  /** The mean of the shares of the words. */
  readonly macro: number;
  /** The share if the commoner reading is always chosen: the baseline. */
  readonly majority: number;
  /** The share of places chosen with a margin of at least SURE. `sureRight` tells how many of these are right. */
  readonly sure: number;
  readonly sureRight: number;
  /** The words with the lowest shares, lowest first. */
  readonly worst: readonly (readonly [word: string, right: number])[];
}

/** One place with the reading that was chosen there. */
interface Tried {
  readonly word: string;
  readonly right: boolean;
  readonly sure: boolean;
}

const FOLDS = 5;

/**
 * Cross-validates on the Wikipedia homograph data (Gorman, Mazovetskiy and Nikolaev 2018, training part). Each place is
 * read with weights learnt without its fifth of the places. The Brown corpus is used for training too. Null if the data
 * is not on this machine.
 */
export function measureHomographs(): HomographScore | null {
  const examples = readExamples();
  const more = readMoreExamples();
  if (!examples || !more) return null;
  const folds = foldsOf(examples);
  const tried: Tried[] = [];
  for (let fold = 0; fold < FOLDS; fold++) {
    const choose = createChooser(fitWeights([...examples.filter((_, i) => folds[i] !== fold), ...more]));
    for (const [i, example] of examples.entries())
      if (folds[i] === fold && example.listed) tried.push(tryOut(example, choose));
  }
  return scoreOf(tried, majorityOf(examples));
}

/** Assigns places to folds so that each fold has, as far as possible, the same number of places of each reading. */
function foldsOf(examples: readonly Example[]): number[] {
  const seen = new Map<string, number>();
  return examples.map(({ word, reading }) => {
    const id = `${word} ${reading}`;
    const n = seen.get(id) ?? 0;
    seen.set(id, n + 1);
    return n % FOLDS;
  });
}

function tryOut({ word, shown, before, after, reading }: Example, choose: Chooser): Tried {
  const choice = choose(shown, before, after);
  return { word, right: choice?.reading === reading, sure: choice !== null && choice.margin >= SURE };
}

function scoreOf(tried: readonly Tried[], majority: number): HomographScore {
  const words = byWord(tried);
  const shares = [...words].map(([word, places]) => [word, shareOf(places, isRight)] as const);
  const sure = tried.filter((one) => one.sure);
  return {
    words: shares.length,
    places: tried.length,
    micro: shareOf(tried, isRight),
    macro: shares.reduce((sum, [, share]) => sum + share, 0) / shares.length,
    majority,
    sure: sure.length / tried.length,
    sureRight: shareOf(sure, isRight),
    worst: shares.toSorted(([, a], [, b]) => a - b).slice(0, 20),
  };
}

function byWord<T extends { readonly word: string }>(places: readonly T[]): Map<string, T[]> {
  const words = new Map<string, T[]>();
  for (const place of places) words.set(place.word, [...(words.get(place.word) ?? []), place]);
  return words;
}

function isRight({ right }: Tried): boolean {
  return right;
}

function majorityOf(examples: readonly Example[]): number {
  const words = [...byWord(examples.filter(({ listed }) => listed)).values()];
  const shares = words.map((places) => {
    const second = shareOf(places, ({ reading }) => reading === 1);
    return Math.max(second, 1 - second);
  });
  return shares.reduce((sum, share) => sum + share, 0) / shares.length;
}

function shareOf<T>(items: readonly T[], holds: (item: T) => boolean): number {
  return items.length === 0 ? 1 : items.filter(holds).length / items.length;
}
