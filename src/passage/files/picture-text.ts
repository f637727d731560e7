import { loadEngine } from '../../host/data/load-engine.ts';
import type { ScreenLine } from '../../picture/join-screens.ts';
import { PictureFault } from '../../picture/picture-reading.ts';
import { say } from '../../wording/say.ts';
import { writeLines } from '../passage-lines.ts';
import { findPdfParagraphs } from './pdf-paragraphs.ts';
import type { PdfLine } from './pdf-text.ts';
import { isWord } from './sure-words.ts';

/**
 * The error with which the height of a line is read, as a share of the height. A line whose height differs by more is a
 * heading.
 */
const SAME_SIZE = 0.2;

/**
 * Returns the text of lines that were read in pictures. Paragraphs, headings and list entries are found from the
 * positions of the lines. A word that a hyphen divides at the end of a line is joined if that makes a word.
 */
export async function writePictureText(lines: readonly ScreenLine[]): Promise<string> {
  const engine = await loadEngine();
  return writeLines(findPdfParagraphs(placeLines(lines), (word) => isWord(word, engine)));
}

/** Returns the reason why a picture cannot be read, with the next step. */
export function explainPictureFault(error: unknown): string {
  return say(`files.${error instanceof PictureFault ? error.reason : 'notRead'}`);
}

/** Places lines as in a PDF, upwards from the bottom. Sizes that differ only by the error of reading are made equal. */
function placeLines(lines: readonly ScreenLine[]): PdfLine[] {
  const body = middleOf(lines.map(({ size }) => size));
  return lines.map(({ words, box, size, screen }) => ({
    text: words.map(({ text }) => text).join(' '),
    x: box.left,
    right: box.right,
    y: -(box.top + box.bottom) / 2,
    size: Math.abs(size - body) <= body * SAME_SIZE ? body : size,
    page: screen,
    spans: [],
  }));
}

function middleOf(numbers: readonly number[]): number {
  const sorted = [...numbers].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? 0;
}
