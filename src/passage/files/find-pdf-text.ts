import { dropContents } from './drop-contents.ts';
import { dropRunningHeads } from './drop-running-heads.ts';
import { findPdfParagraphs } from './pdf-paragraphs.ts';
import type { PdfLine, PdfPage, PdfParagraph, PdfSpan } from './pdf-text.ts';

/**
 * Returns the text of all pages of a PDF at once: headings, paragraphs and list entries. Leaves out running heads, page
 * numbers and lists of contents.
 */
export function findPdfText(pages: readonly PdfPage[], isWord: (word: string) => boolean): PdfParagraph[] {
  const lines = dropRunningHeads(dropContents(pages.map((page) => page.lines)));
  return findPdfParagraphs(
    lines.flat().map((line) => mendSeams(line, isWord)),
    isWord,
  );
}

/**
 * Joins the words of a line that a file cuts between two pieces. Chromium prints a place where a word might have been
 * divided as a blank without width. `fri` and ` end` become friend; `the` and ` end` stay two words.
 */
export function mendSeams(line: PdfLine, isWord: (word: string) => boolean): PdfLine {
  const spans = line.spans.map((span) => ({ ...span }));
  const isMended = spans.map((span, n) => n > 0 && mendSeam(spans[n - 1]!, span, isWord));
  if (!isMended.includes(true)) return line;
  const text = spans
    .map((span) => span.text)
    .join('')
    .replace(/\s+/g, ' ')
    .trim();
  return { ...line, text, spans };
}

function mendSeam(before: PdfSpan, after: PdfSpan, isWord: (word: string) => boolean): boolean {
  const head = /(?<!\p{L})\p{L}*\p{Ll}$/u.exec(before.text)?.[0];
  const rest = /^ (\p{Ll}+)/u.exec(after.text)?.[1];
  if (!head || !rest || (isWord(head) && isWord(rest)) || !isWord(head + rest)) return false;
  after.text = after.text.slice(1);
  return true;
}
