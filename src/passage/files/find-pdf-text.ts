import { dropContents } from './drop-contents.ts';
import { dropRunningHeads } from './drop-running-heads.ts';
import { mendSeams } from './mend-seams.ts';
import { findPdfParagraphs } from './pdf-paragraphs.ts';
import type { PdfPage, PdfParagraph } from './pdf-text.ts';

/**
 * The text of a PDF, of all of its pages at once: its headings, paragraphs and entries of lists, without running heads, page
 * numbers and lists of contents.
 */
export function findPdfText(pages: readonly PdfPage[], isWord: (word: string) => boolean): PdfParagraph[] {
  const lines = dropRunningHeads(dropContents(pages.map((page) => page.lines)));
  return findPdfParagraphs(
    lines.flat().map((line) => mendSeams(line, isWord)),
    isWord,
  );
}
