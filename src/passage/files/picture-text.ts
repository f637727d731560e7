import { loadEngine } from '../../host/data/load-engine.ts';
import type { ScreenLine } from '../../picture/join-screens.ts';
import { PictureFault } from '../../picture/picture-reading.ts';
import { say } from '../../wording/say.ts';
import { writeLines } from '../passage-lines.ts';
import { findPdfParagraphs } from './pdf-paragraphs.ts';
import type { PdfLine } from './pdf-text.ts';
import { isWord } from './sure-words.ts';

/** The height of a line is read with so much error; what differs more is a heading's. */
const SAME_SIZE = 0.2;

/**
 * The text of lines that were read in pictures: paragraphs, headings and entries of lists by where the lines are, a word that a hyphen divides
 * at the end of a line put together when that makes a word.
 */
export async function writePictureText(lines: readonly ScreenLine[]): Promise<string> {
  const engine = await loadEngine();
  return writeLines(findPdfParagraphs(placeLines(lines), (word) => isWord(word, engine)));
}

/** Why a picture cannot be read, with the next step. */
export function explainPictureFault(error: unknown): string {
  return say(`files.${error instanceof PictureFault ? error.reason : 'notRead'}`);
}

/** As a PDF has its lines, upwards from the bottom; sizes that differ by the error of reading alone are made one. */
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
