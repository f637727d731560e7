/** Reads values that were written as codes. A frequent value has a short code. `kind` is the kind of the value. */
export interface CodeReader {
  /** Reads a value below 256. */
  byte(kind: number): number;
  /** Reads a value below 65,536. */
  number(kind: number): number;
}

/** Maximum length of a code in bits. A reader has a table with one entry for each run of so many bits of each kind. */
export const LONGEST_CODE = 10;
/** The byte that says that a number is large. Two bytes of the kind {@link LARGE_KIND} follow. */
export const LARGE = 255;
export const LARGE_KIND = 0;

/** The lowest bits of a number, as many as the longest code has. */
const RUN = (1 << LONGEST_CODE) - 1;

/**
 * Reads the output of data/guess/write-codes.ts. The tables come first. For each kind, one byte tells the largest value,
 * or is zero if the kind does not occur. Then four bits for each value up to the largest give the length of its code,
 * zero for a value that does not occur. The codes follow from their lengths: shorter codes come before longer codes, and
 * codes of the same length are in the order of their values (canonical Huffman codes). After the tables come the codes
 * of all values, the highest bit first. Past the end of the bytes, the reader gets zeros.
 */
export function createCodeReader(bytes: Uint8Array, start: number, kinds: number): CodeReader {
  /** For each kind and each run of bits: the value of the code at the start of the run << 4 | the length of the code. */
  const entries = new Uint16Array(kinds << LONGEST_CODE);
  let next = start;
  for (let kind = 0; kind < kinds; kind++) {
    const largest = bytes[next++] ?? 0;
    if (largest === 0) continue;
    const lengths = bytes.subarray(next, next + (largest >> 1) + 1);
    next += lengths.length;
    fillTable(entries.subarray(kind << LONGEST_CODE, (kind + 1) << LONGEST_CODE), lengths);
  }

  /** The bits that were taken from the bytes. The lowest `count` of them are not used yet. */
  let held = 0;
  let count = 0;

  function byte(kind: number): number {
    if (count < LONGEST_CODE) {
      // Past the end, the bytes are undefined, which counts as zero here.
      held = ((held & RUN) << 16) | (bytes[next]! << 8) | bytes[next + 1]!;
      next += 2;
      count += 16;
    }
    const run = (held >> (count - LONGEST_CODE)) & RUN;
    const entry = entries[(kind << LONGEST_CODE) | run]!;
    count -= entry & 15;
    return entry >> 4;
  }

  function number(kind: number): number {
    const value = byte(kind);
    return value < LARGE ? value : (byte(LARGE_KIND) << 8) | byte(LARGE_KIND);
  }

  return { byte, number };
}

/** Fills the table of one kind from the lengths of its codes. */
function fillTable(table: Uint16Array, lengths: Uint8Array): void {
  let from = 0;
  for (let length = 1; length <= LONGEST_CODE; length++) {
    const runs = 1 << (LONGEST_CODE - length);
    for (let value = 0; value < lengths.length * 2; value++) {
      if (((lengths[value >> 1]! >> ((value & 1) * 4)) & 15) !== length) continue;
      table.fill((value << 4) | length, from, from + runs);
      from += runs;
    }
  }
}
