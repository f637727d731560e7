/** A clue to the reading of a homograph: its id, and whether it speaks for (1) or against (-1) that reading. */
export interface Term {
  readonly id: string;
  readonly sign: number;
  /** How often the id must occur to count. */
  readonly least: number;
  /** L1 and L2. L1: how much evidence a weight needs before it is kept. L2: how strongly weights are kept small. */
  readonly sparse: number;
  readonly penalty: number;
}

/** One training example. */
export interface Row {
  readonly terms: readonly Term[];
  /** 1 or 0. */
  readonly target: number;
  /** The weight of the example. */
  readonly weight: number;
  /** Log odds that are known beforehand. */
  readonly known: number;
}

/** The step size of Follow-the-regularised-leader (McMahan and others 2013), found by cross-validation. */
const STEP = 0.5;
/** The smallest error that changes weights. Almost correct examples are skipped. */
const RIGHT = 1e-4;

/**
 * The first round whose weights count. The result is the mean of the weights after each round from this round on, which
 * varies less than the last weights. Found by cross-validation.
 */
const SETTLED = 3;

/** Learns by sparse logistic regression and returns log odds by id. The same rows give the same weights. */
export function learnWeights(rows: readonly Row[], rounds: number): Map<string, number> {
  const ids = new Map<string, number>();
  const counts: number[] = [];
  const sparse: number[] = [];
  const penalty: number[] = [];
  for (const { terms } of rows) {
    for (const term of terms) {
      let i = ids.get(term.id);
      if (i === undefined) {
        i = counts.length;
        ids.set(term.id, i);
        counts.push(0);
        sparse.push(term.sparse);
        penalty.push(term.penalty);
      }
      counts[i]!++;
    }
  }
  const places = rows.map(({ terms, target, weight, known }) => {
    const kept = terms.filter(({ id, least }) => counts[ids.get(id)!]! >= least);
    return {
      slots: Int32Array.from(kept, ({ id }) => ids.get(id)!),
      signs: Int8Array.from(kept, ({ sign }) => sign),
      target,
      weight,
      known,
    };
  });
  const z = new Float64Array(counts.length);
  const n = new Float64Array(counts.length);
  const weights = new Float64Array(counts.length);
  const settled = new Float64Array(counts.length);
  for (let round = 0; round < rounds; round++) {
    for (const { slots, signs, target, weight, known } of shuffle(places, round)) {
      let score = known;
      for (let k = 0; k < slots.length; k++) score += signs[k]! * weights[slots[k]!]!;
      const error = weight * (1 / (1 + Math.exp(-score)) - target);
      if (Math.abs(error) < RIGHT) continue;
      for (let k = 0; k < slots.length; k++) {
        const i = slots[k]!;
        const gradient = error * signs[k]!;
        const before = Math.sqrt(n[i]!);
        n[i]! += gradient * gradient;
        const now = Math.sqrt(n[i]!);
        z[i]! += gradient - ((now - before) / STEP) * weights[i]!;
        const pull = Math.abs(z[i]!) - sparse[i]!;
        weights[i] = pull <= 0 ? 0 : (-Math.sign(z[i]!) * pull) / (now / STEP + 1 / STEP + penalty[i]!);
      }
    }
    if (round >= SETTLED) for (const [i, weight] of weights.entries()) settled[i]! += weight;
  }
  const taken = rounds - SETTLED;
  return new Map([...ids].filter(([, i]) => settled[i] !== 0).map(([id, i]) => [id, settled[i]! / taken]));
}

/** Shuffles items in a fixed order for each round. */
function shuffle<T>(items: readonly T[], round: number): T[] {
  const shuffled = [...items];
  let state = round + 1;
  for (let i = shuffled.length - 1; i > 0; i--) {
    state = (Math.imul(state, 1_103_515_245) + 12_345) >>> 0;
    const j = (state >>> 8) % (i + 1);
    [shuffled[i], shuffled[j]] = [shuffled[j]!, shuffled[i]!];
  }
  return shuffled;
}
