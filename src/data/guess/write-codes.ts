import { LARGE, LARGE_KIND, LONGEST_CODE } from '../../analyze/guess/read-codes.ts';

/** Collects values and encodes them for analyze/guess/read-codes.ts. */
export interface CodeWriter {
  byte(kind: number, value: number): void;
  number(kind: number, value: number): void;
  /** Returns the tables and the codes of all values so far. */
  end(): Uint8Array;
}

/** Creates a coder for a number of kinds. The more often a value of a kind occurs, the shorter its code is. */
export function createCodeWriter(kinds: number): CodeWriter {
  const told: { readonly kind: number; readonly value: number }[] = [];
  const counts = Array.from({ length: kinds }, () => new Map<number, number>());

  function byte(kind: number, value: number): void {
    told.push({ kind, value });
    counts[kind]!.set(value, (counts[kind]!.get(value) ?? 0) + 1);
  }

  function number(kind: number, value: number): void {
    byte(kind, Math.min(value, LARGE));
    if (value < LARGE) return;
    byte(LARGE_KIND, value >> 8);
    byte(LARGE_KIND, value & 255);
  }

  function end(): Uint8Array {
    const lengths = counts.map(lengthsOf);
    const codes = lengths.map(codesOf);
    const bytes = lengths.flatMap(tableOf);
    let held = 0;
    let count = 0;
    for (const { kind, value } of told) {
      const { code, length } = codes[kind]!.get(value)!;
      held = (held << length) | code;
      count += length;
      for (; count >= 8; count -= 8) bytes.push((held >> (count - 8)) & 255);
      held &= 255;
    }
    bytes.push((held << (8 - count)) & 255);
    // The reader takes two bytes at a time.
    bytes.push(0, 0);
    return Uint8Array.from(bytes);
  }

  return { byte, number, end };
}

/** Code lengths by value. */
type Lengths = ReadonlyMap<number, number>;

/**
 * Returns the length of the code of each value (Huffman's algorithm). If a code would be too long, the counts are made
 * more alike until no code is.
 */
function lengthsOf(counts: ReadonlyMap<number, number>): Lengths {
  if (counts.size === 1) return new Map([...counts.keys()].map((value) => [value, 1]));
  const lengths = new Map<number, number>();
  const trees = [...counts].map(([value, count]) => ({ count, values: [value] }));
  while (trees.length > 1) {
    trees.sort((a, b) => b.count - a.count || a.values[0]! - b.values[0]!);
    const [one, other] = [trees.pop()!, trees.pop()!];
    const values = [...one.values, ...other.values];
    for (const value of values) lengths.set(value, (lengths.get(value) ?? 0) + 1);
    trees.push({ count: one.count + other.count, values });
  }
  if (Math.max(0, ...lengths.values()) <= LONGEST_CODE) return lengths;
  return lengthsOf(new Map([...counts].map(([value, count]) => [value, Math.ceil(count * 0.75) + 1])));
}

/** Returns the canonical code of each value. */
function codesOf(lengths: Lengths): ReadonlyMap<number, { readonly code: number; readonly length: number }> {
  const sorted = [...lengths].sort(([a, x], [b, y]) => x - y || a - b);
  let code = 0;
  let before = 0;
  return new Map(
    sorted.map(([value, length]) => {
      code <<= length - before;
      before = length;
      return [value, { code: code++, length }] as const;
    }),
  );
}

function tableOf(lengths: Lengths): number[] {
  if (lengths.size === 0) return [0];
  const largest = Math.max(1, ...lengths.keys());
  const table = [largest];
  for (let value = 0; value <= largest; value += 2)
    table.push((lengths.get(value) ?? 0) | ((lengths.get(value + 1) ?? 0) << 4));
  return table;
}
