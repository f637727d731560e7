/** All token sequences (runs) of the words, as a trie. Run 0 is the empty run. */
export interface Grams {
  readonly size: number;
  /** The run without its last token. */
  readonly parent: Int32Array;
  /** The run without its first token. */
  readonly suffix: Int32Array;
  /** The last token of the run. */
  readonly token: Int32Array;
  /** How often the run occurs. */
  readonly count: Int32Array;
  /** 1 if the run begins at the edge of a word. */
  readonly atEdge: Uint8Array;
  ofOrder(order: number): readonly number[];
}

/** The most runs that fit. The dictionary's words have some 800,000 runs of up to six tokens. */
const MOST = 1 << 21;
const SLOTS = 1 << 23;

/** Counts every run of up to `longest` tokens. Each word starts with the edge 0 and ends with the edge 1. */
export function createGrams(words: readonly (readonly number[])[], longest: number): Grams {
  const parent = new Int32Array(MOST);
  const suffix = new Int32Array(MOST);
  const token = new Int32Array(MOST);
  const count = new Int32Array(MOST);
  const atEdge = new Uint8Array(MOST);
  const orders: number[][] = Array.from({ length: longest + 1 }, () => []);
  const slots = new Int32Array(SLOTS);
  let size = 1;

  function child(of: number, by: number, order: number, shorter: number): number {
    let hash = Math.imul(of, 0x9e3779b1) ^ Math.imul(by + 1, 0x85ebca6b);
    hash ^= hash >>> 15;
    for (let slot = hash & (SLOTS - 1); ; slot = (slot + 1) & (SLOTS - 1)) {
      const found = slots[slot]!;
      if (found === 0) {
        if (size === MOST) throw new Error('There are more runs of tokens than grams.ts has room for.');
        slots[slot] = size;
        parent[size] = of;
        token[size] = by;
        suffix[size] = shorter;
        atEdge[size] = of === 0 ? Number(by === 0) : atEdge[of]!;
        orders[order]!.push(size);
        return size++;
      }
      if (parent[found] === of && token[found] === by) return found;
    }
  }

  for (const word of words) {
    let before: number[] = [0];
    for (const [i, by] of [0, ...word, 1].entries()) {
      const now = [0];
      for (let order = 1; order <= Math.min(longest, i + 1); order++) {
        const gram = child(before[order - 1]!, by, order, now[order - 1]!);
        count[gram]!++;
        now.push(gram);
      }
      before = now;
    }
  }
  return { size, parent, suffix, token, count, atEdge, ofOrder: (order) => orders[order]! };
}
