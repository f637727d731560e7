import { readFileSync } from 'node:fs';
import { MARKS } from '../../swap/table-format.ts';
import type { PartOfSpeech } from '../../swap/types.ts';

/** One line of `source/swaps.tsv`. */
export interface OwnSwaps {
  readonly word: string;
  /** `x`: the swaps replace exactly this form and are not inflected. */
  readonly part: PartOfSpeech | 'x';
  /** The swaps, best first. */
  readonly swaps: readonly string[];
  /** The `MARKS` bits of each swap. */
  readonly marks: readonly number[];
  /** Words that occur near this sense. Empty if the word has only one sense. */
  readonly cues: readonly string[];
}

/** Reads our own swaps. Throws with the line number if a line is malformed. */
export function readOwnSwaps(
  content = readFileSync(new URL('../source/swaps.tsv', import.meta.url), 'utf8'),
): OwnSwaps[] {
  return content.split('\n').flatMap((line, i) => {
    if (line === '' || line.startsWith('#')) return [];
    const match = /^([a-z' -]+)\t([nvarx])\t([a-z'|+~! -]+)(?:\t([a-z ]+))?$/i.exec(line);
    if (!match) throw new Error(`source/swaps.tsv, line ${i + 1}: not word, part, swaps, cues: ${line}`);
    const [, word, part, swaps, cues] = match;
    const marked = swaps!.split('|').map((swap) => /^(.*?)([+~!]*)$/.exec(swap)!);
    return [
      {
        word: word!,
        part: part as OwnSwaps['part'],
        swaps: marked.map(([, swap]) => swap!),
        marks: marked.map(([, , signs]) => bitsOf(signs!)),
        cues: cues ? cues.split(' ') : [],
      },
    ];
  });
}

function bitsOf(signs: string): number {
  return (
    (signs.includes('!') ? MARKS.sure : 0) |
    (signs.includes('+') ? MARKS.object : 0) |
    (signs.includes('~') ? MARKS.noObject : 0)
  );
}
