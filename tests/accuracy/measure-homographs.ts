import { type Chooser, createChooser, SURE } from '../../src/analyze/homographs/choose-reading.ts';
import { fitWeights } from '../../src/data/homographs/fit-weights.ts';
import { type Example, readExamples, readMoreExamples } from '../../src/data/homographs/read-examples.ts';

/** Shares from 0 to 1 over places of homographs whose readings are both in the word table. */
export interface HomographScore {
  readonly words: number;
  readonly places: number;
  readonly micro: number;
  /** Mean of the words' own shares. */
  readonly macro: number;
  /** Always the commoner reading: what there is to beat. */
  readonly majority: number;
  /** Places chosen with a margin of at least SURE, and how many of them are right. */
  readonly sure: number;
  readonly sureRight: number;
  /** The words least often right, worst first. */
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
 * Cross-validation on the Wikipedia homograph data (Gorman, Mazovetskiy and Nikolaev 2018, training part): each
 * place is read with weights learnt without its fifth of the places; the Brown corpus is learnt from as well. Null where
 * the data is not on this machine.
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

/** The same number of places of each reading in every fold, as far as it goes. */
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
