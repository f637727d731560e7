import { tokenize } from '../analyze/index.ts';
import type { Token } from '../analyze/types.ts';
import { readLine } from './passage-lines.ts';

/** The words of one line of a passage; offsets are UTF-16 units into the line. */
export interface CutLine {
  readonly words: readonly Pick<Token, 'start' | 'end' | 'key'>[];
  /** Pieces that are no words: numbers, addresses. */
  readonly skipped: number;
}

/** Cuts a line into words, without the sign that makes a heading or an entry of it. */
export function cutLine(line: string): CutLine {
  const { text, sign } = readLine(line);
  const tokens = tokenize(text);
  const words = tokens
    .filter(({ kind }) => kind === 'word')
    .map(({ key, start, end }) => ({ start: start + sign, end: end + sign, key }));
  return { words, skipped: tokens.length - words.length };
}
