import type { LessonBlock } from './lesson-part.ts';

/**
 * Returns a block with the apostrophes and quotation marks of print, whichever marks its words and the passage have:
 * didn’t, “Row!”.
 */
export function withTypographicMarks(block: LessonBlock): LessonBlock {
  return { ...block, rows: block.rows.map((row) => row.map(typographic)) };
}

/**
 * Returns a text with the marks of print: `"Row!" said Bram's gran.` → `“Row!” said Bram’s gran.` The marks of a foot
 * and an inch (6' 2") stay.
 */
export function typographic(text: string): string {
  return text
    .replace(/(?<![\p{N}])"/gu, (_, at: number) => (opens(text, at) ? '“' : '”'))
    .replace(/(?<![\p{N}])'/gu, (_, at: number) => (opens(text, at) ? '‘' : '’'));
}

/** Whether a mark opens a quotation: nothing, a space, a bracket or a dash comes before the mark, and something follows. */
function opens(text: string, at: number): boolean {
  return /(?:^|[\s([—–-]|["“‘])$/u.test(text.slice(0, at)) && /^\S/u.test(text.slice(at + 1));
}
