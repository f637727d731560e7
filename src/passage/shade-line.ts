import type { Judge } from '../analyze/index.ts';
import type { Standing, WordKey } from '../analyze/types.ts';
import { type CutLine, cutLine } from './cut-line.ts';

/** A word of a line with what it is to the group; offsets are UTF-16 units into the line. */
export interface ShadedWord {
  readonly start: number;
  readonly end: number;
  readonly key: WordKey;
  readonly standing: Standing;
}

export interface ShadedLine extends CutLine {
  readonly words: readonly ShadedWord[];
}

/** Gives the words of a line; lines are remembered, so that typing costs one line. */
export function createLineShader(judge: Judge): (line: string) => ShadedLine {
  const known = new Map<string, ShadedLine>();
  const MOST = 20_000;
  return (line) => {
    const before = known.get(line);
    if (before) return before;
    const { words, skipped } = cutLine(line);
    const shaded = {
      words: words.map((word) => ({ ...word, standing: judge(word.key).standing })),
      skipped,
    };
    if (known.size >= MOST) known.clear();
    known.set(line, shaded);
    return shaded;
  };
}
