import { readFileSync } from 'node:fs';
import type { PartOfSpeech } from '../../swap/types.ts';

/** A line of `source/swaps.tsv`. */
export interface OwnSwaps {
  readonly word: string;
  /** `x`: the swaps stand for this very form and are not inflected. */
  readonly part: PartOfSpeech | 'x';
  /** Best first. */
  readonly swaps: readonly string[];
  /** Words met near this sense; empty when it is the only one. */
  readonly cues: readonly string[];
}

/** Reads our own swaps. Throws with the line's number when one is not well formed. */
export function readOwnSwaps(
  content = readFileSync(new URL('../source/swaps.tsv', import.meta.url), 'utf8'),
): OwnSwaps[] {
  return content.split('\n').flatMap((line, i) => {
    if (line === '' || line.startsWith('#')) return [];
    const match = /^([a-z' -]+)\t([nvarx])\t([a-z'| -]+)(?:\t([a-z ]+))?$/i.exec(line);
    if (!match) throw new Error(`source/swaps.tsv, line ${i + 1}: not word, part, swaps, cues: ${line}`);
    const [, word, part, swaps, cues] = match;
    return [
      {
        word: word!,
        part: part as OwnSwaps['part'],
        swaps: swaps!.split('|'),
        cues: cues ? cues.split(' ') : [],
      },
    ];
  });
}
