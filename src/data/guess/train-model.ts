import { createGrams, type Grams } from './grams.ts';

/** The longest run of tokens that is counted. */
export const ORDER = 6;
/**
 * A run is kept if its count times its gain is at least this number. The gain tells, in natural logarithms, how much
 * likelier the run makes the letters of its word.
 */
const WORTH = 1.1;
/** Runs are dropped in rounds. The remaining runs take over the share of the dropped runs before the next round. */
const ROUNDS = 2;

/** An n-gram model: the kept runs, their probabilities, and the weight given to shorter runs for what follows. */
export interface TrainedModel {
  readonly grams: Grams;
  readonly kept: Uint8Array;
  readonly chance: Float64Array;
  readonly backoff: Float64Array;
}

/**
 * Learns a model from words written as token numbers, where 0 and 1 are the edges. Uses interpolated modified
 * Kneser-Ney smoothing (Chen and Goodman 1999). Then prunes runs that gain little (after Stolcke 1998). The count of a
 * dropped run goes to the shorter run (after Siivola and others 2007). If a run is kept, the run without its first
 * token and the run without its last token are kept too.
 */
export function trainModel(words: readonly (readonly number[])[], tokens: number): TrainedModel {
  const grams = createGrams(words, ORDER);
  const model: TrainedModel = {
    grams,
    kept: new Uint8Array(grams.size).fill(1),
    chance: new Float64Array(grams.size),
    backoff: new Float64Array(grams.size),
  };
  estimate(model, tokens);
  for (let round = 1; round <= ROUNDS; round++) {
    prune(model, (WORTH * round) / ROUNDS);
    estimate(model, tokens);
  }
  return model;
}

function prune({ grams, kept, chance, backoff }: TrainedModel, worth: number): void {
  const needed = new Uint8Array(grams.size);
  for (let order = ORDER; order > 1; order--) {
    for (const gram of grams.ofOrder(order)) {
      const parent = grams.parent[gram]!;
      const suffix = grams.suffix[gram]!;
      if (kept[gram] === 1 && needed[gram] === 0) {
        const gain = Math.log(chance[gram]! / (backoff[parent]! * chance[suffix]!));
        if (grams.count[gram]! * gain < worth) kept[gram] = 0;
      }
      if (kept[gram] === 1) needed[parent] = needed[suffix] = 1;
    }
  }
}

/** Computes chances and backoffs from the counts of the kept runs. A dropped run gets the values of the shorter runs. */
function estimate({ grams, kept, chance, backoff }: TrainedModel, tokens: number): void {
  const counts = continuationCounts(grams, kept);
  const totals = new Float64Array(grams.size);
  backoff.fill(1);
  for (let order = 1; order <= ORDER; order++) {
    const runs = grams.ofOrder(order).filter((gram) => grams.token[gram] !== 0);
    const discount = discountsOf(runs.map((gram) => counts[gram]!));
    const sure = (gram: number): number =>
      kept[gram] === 1 ? Math.max(0, counts[gram]! - discount(counts[gram]!)) : 0;
    for (const gram of runs) totals[grams.parent[gram]!]! += counts[gram]!;
    for (const gram of runs) {
      const parent = grams.parent[gram]!;
      backoff[parent]! -= sure(gram) / totals[parent]!;
    }
    for (const gram of runs) {
      const parent = grams.parent[gram]!;
      const shorter = order === 1 ? 1 / tokens : chance[grams.suffix[gram]!]!;
      chance[gram] = sure(gram) / totals[parent]! + backoff[parent]! * shorter;
    }
  }
}

/** Counts the different contexts of each run. A run at a word's edge or of full length is counted by its occurrences. */
function continuationCounts(grams: Grams, kept: Uint8Array): Float64Array {
  const counts = new Float64Array(grams.size);
  for (let order = ORDER; order >= 1; order--) {
    for (const gram of grams.ofOrder(order)) {
      if (order === ORDER || grams.atEdge[gram] === 1) counts[gram] = grams.count[gram]!;
      const suffix = grams.suffix[gram]!;
      if (order > 1 && grams.atEdge[suffix] === 0) counts[suffix]! += kept[gram] === 1 ? 1 : counts[gram]!;
    }
  }
  return counts;
}

/** Returns how much is subtracted from a count, depending on how many runs occur once, twice, three and four times. */
function discountsOf(counts: readonly number[]): (count: number) => number {
  const met = [0, 0, 0, 0, 0];
  for (const count of counts) if (count <= 4) met[count]!++;
  const [, n1, n2, n3, n4] = met as [number, number, number, number, number];
  const share = n1 / (n1 + 2 * n2);
  const take = [0, 1 - (2 * share * n2) / n1, 2 - (3 * share * n3) / n2, 3 - (4 * share * n4) / n3].map(
    (found, i) => (Number.isFinite(found) && found > 0 ? Math.min(found, i) : 0.6 * i),
  );
  return (count) => take[Math.min(3, count)]!;
}
