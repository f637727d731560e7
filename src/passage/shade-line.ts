import { type Judge, tokenize } from '../analyze/index.ts';
import type { Standing, WordKey } from '../analyze/types.ts';
import { readLine } from './passage-lines.ts';

/** A word of a line with what it is to the group; offsets are UTF-16 units into the line. */
export interface ShadedWord {
  readonly start: number;
  readonly end: number;
  readonly key: WordKey;
  readonly standing: Standing;
}

export interface ShadedLine {
  readonly words: readonly ShadedWord[];
  /** Pieces that are no words: numbers, addresses. */
  readonly skipped: number;
}

/** Gives the words of a line; lines are remembered, so that typing costs one line. */
export function createLineShader(judge: Judge): (line: string) => ShadedLine {
  const known = new Map<string, ShadedLine>();
  const MOST = 5000;
  return (line) => {
    const before = known.get(line);
    if (before) return before;
    const { text, sign } = readLine(line);
    const words: ShadedWord[] = [];
    let skipped = 0;
    for (const { kind, key, start, end } of tokenize(text)) {
      if (kind === 'skipped') skipped++;
      else words.push({ start: start + sign, end: end + sign, key, standing: judge(key).standing });
    }
    const shaded = { words, skipped };
    if (known.size >= MOST) known.clear();
    known.set(line, shaded);
    return shaded;
  };
}
