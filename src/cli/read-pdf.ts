import type { PDFDocumentProxy } from 'pdfjs-dist';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Analyzer } from '../analyze/index.ts';
import { dropRunningHeads } from '../passage/files/drop-running-heads.ts';
import { expectSmallStreams } from '../passage/files/expect-small-streams.ts';
import { FileFault } from '../passage/files/file-fault.ts';
import { findPdfLines } from '../passage/files/pdf-lines.ts';
import { findPdfParagraphs } from '../passage/files/pdf-paragraphs.ts';
import type { PdfLine, PdfPiece } from '../passage/files/pdf-text.ts';
import type { OpenedText } from './opened-text.ts';

/**
 * The text of a PDF, put together from where it is drawn; running heads and page numbers are left out. Its scripts are not
 * run. Rejects with `FileFault`.
 */
export async function readPdf(bytes: Uint8Array, engine: Analyzer): Promise<OpenedText> {
  expectSmallStreams(bytes);
  // The library keeps the bytes it is given for itself.
  const task = getDocument({
    data: new Uint8Array(bytes),
    verbosity: 0,
    disableFontFace: true,
    useWasm: false,
    enableXfa: false,
    isEvalSupported: false,
  });
  try {
    const lines = dropRunningHeads(await readPages(await task.promise)).flat();
    if (!lines.some(({ text }) => /\p{L}/u.test(text)))
      throw new FileFault('There are no words in this PDF. If it was scanned, let a program read it first.');
    const isWord = (word: string): boolean =>
      /^(dictionary|derived)$/.test(engine.analyze(word).readings[0]?.source ?? '');
    const found = findPdfParagraphs(lines, isWord);
    return {
      title: found.find(({ kind }) => kind === 'heading')?.text ?? '',
      text: found.map(({ text }) => text).join('\n\n'),
    };
  } catch (error) {
    throw asFault(error);
  } finally {
    await task.destroy();
  }
}

async function readPages(pdf: PDFDocumentProxy): Promise<PdfLine[][]> {
  const pages: PdfLine[][] = [];
  for (let n = 0; n < pdf.numPages; n++) {
    const page = await pdf.getPage(n + 1);
    const { items } = await page.getTextContent();
    const pieces = items.flatMap((item): PdfPiece[] => {
      if (!('str' in item)) return [];
      const [a, b, c, d, x, y] = item.transform as [number, number, number, number, number, number];
      // Text that stands on its side is a margin's.
      if (Math.abs(b) > Math.abs(a)) return [];
      return [{ text: item.str, x, y, width: item.width, size: Math.hypot(c, d) || item.height || 1 }];
    });
    pages.push(findPdfLines(pieces, n));
    page.cleanup();
  }
  return pages;
}

function asFault(error: unknown): FileFault {
  if (error instanceof FileFault) return error;
  return error instanceof Error && error.name === 'PasswordException'
    ? new FileFault('This PDF is locked by a password. Print it as a new PDF, and give that.')
    : new FileFault('This PDF is damaged. Get it again.');
}
