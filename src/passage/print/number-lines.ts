import { countByLine } from './cut-lines.ts';
import type { SheetChoices } from './sheet-choices.ts';

/** A block of text, with the offsets at which its lines begin. */
export interface BrokenText {
  readonly text: string;
  readonly starts: readonly number[];
}

/**
 * Returns the number beside each line of each block. This is the number of the line, or the number of words up to its
 * end.
 */
export function numberLines(
  blocks: readonly BrokenText[],
  margin: SheetChoices['margin'],
): (number | null)[][] {
  let before = 0;
  return blocks.map(({ text, starts }) => {
    if (margin === 'none') return starts.map(() => null);
    const own = margin === 'counts' ? countByLine(text, starts) : starts.map((_, i) => i + 1);
    const numbers = own.map((number) => before + number);
    before = numbers.at(-1) ?? before;
    return numbers;
  });
}
