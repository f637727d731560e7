import { CUES, MAGIC, type TableText } from '../../swap/table-format.ts';

/** The lists of `swaps.bin`, as numbers. `src/swap/table-format.ts` describes layout and order. */
export interface TableLists {
  readonly text: TableText;
  readonly codebook: Uint8Array;
  readonly codes: Uint8Array;
  readonly shares: readonly number[];
  readonly headWords: readonly number[];
  readonly headParts: readonly number[];
  readonly headEnds: readonly number[];
  readonly swapWords: readonly number[];
  readonly swapPriors: readonly number[];
  readonly swapSenses: readonly number[];
  readonly swapMarks: readonly number[];
  readonly cues: readonly (readonly number[])[];
  readonly phrases: readonly number[];
  readonly followed: { readonly words: readonly number[]; readonly shares: readonly number[] };
}

export function writeTable(lists: TableLists): Uint8Array {
  const text = new TextEncoder().encode(JSON.stringify(lists.text));
  const length = new Uint8Array(new Uint32Array([text.length]).buffer);
  const cues = lists.cues.flatMap((each) => Array.from({ length: CUES }, (_, i) => each[i % each.length]!));
  const parts = [
    lists.codebook,
    lists.codes,
    Uint16Array.from(lists.shares),
    Uint16Array.from(lists.headWords),
    Uint8Array.from(lists.headParts),
    Uint32Array.from(lists.headEnds),
    Uint16Array.from(lists.swapWords),
    Uint8Array.from(lists.swapPriors),
    Uint16Array.from(lists.swapSenses),
    Uint8Array.from(lists.swapMarks),
    Uint16Array.from(cues),
    Uint16Array.from(lists.phrases),
    Uint16Array.from(lists.followed.words),
    Uint8Array.from(lists.followed.shares),
  ];
  return Buffer.concat([
    new TextEncoder().encode(MAGIC),
    length,
    text,
    ...parts.flatMap((part) => {
      const bytes = new Uint8Array(part.buffer, part.byteOffset, part.byteLength);
      return [bytes, new Uint8Array((4 - (bytes.length % 4)) % 4)];
    }),
  ]);
}
