import { tokenize } from '../analyze/index.ts';
import type { Token } from '../analyze/types.ts';
import { readLine } from './passage-lines.ts';

/** The words of one line of a passage; offsets are UTF-16 units into the line. */
export interface CutLine {
  readonly words: readonly Pick<Token, 'start' | 'end' | 'key'>[];
  /** The number of pieces that are not words, such as numbers and addresses. */
  readonly skipped: number;
}

/** Cuts a line into words, without the sign that makes the line a heading or a list entry. */
export function cutLine(line: string): CutLine {
  const { text, sign } = readLine(line);
  const tokens = tokenize(text);
  const words = tokens
    .filter(({ kind }) => kind === 'word')
    .map(({ key, start, end }) => ({ start: start + sign, end: end + sign, key }));
  return { words, skipped: tokens.length - words.length };
}
