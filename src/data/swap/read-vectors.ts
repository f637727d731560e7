import { readFileSync } from 'node:fs';
import { CHOICES, PART, PARTS } from '../../swap/table-format.ts';

/** The vectors that `derive-vectors.ts` wrote next to this file. */
export interface Vectors {
  /** The words in the order of the codes. */
  readonly words: readonly string[];
  readonly codebook: Uint8Array;
  readonly codes: Uint8Array;
  /** Returns the vector of a word, of length 1. For several words, returns the vector of their sum. */
  readonly of: (word: string) => Float32Array | null;
}

export function readVectors(): Vectors {
  const about = JSON.parse(readFileSync(new URL('vectors.json', import.meta.url), 'utf8')) as {
    words: string;
  };
  const bytes = new Uint8Array(readFileSync(new URL('vectors.bin', import.meta.url)));
  const words = about.words.split(' ');
  const codebook = bytes.subarray(0, PARTS * CHOICES * PART);
  const codes = bytes.subarray(codebook.length);
  const ids = new Map(words.map((word, id) => [word, id]));
  const made = new Map<string, Float32Array | null>();
  const make = (word: string): Float32Array | null => {
    const rows = word.split(' ').flatMap((each) => ids.get(each) ?? []);
    if (rows.length === 0) return null;
    const sum = new Float32Array(PARTS * PART);
    for (const row of rows) {
      for (let part = 0; part < PARTS; part++) {
        const from = (part * CHOICES + codes[row * PARTS + part]!) * PART;
        for (let i = 0; i < PART; i++) sum[part * PART + i]! += (codebook[from + i]! << 24) >> 24;
      }
    }
    const length = Math.hypot(...sum) || 1;
    return sum.map((value) => value / length);
  };
  const of = (word: string): Float32Array | null => {
    if (!made.has(word)) made.set(word, make(word));
    return made.get(word)!;
  };
  return { words, codebook, codes, of };
}
