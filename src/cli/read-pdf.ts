import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Analyzer } from '../analyze/index.ts';
import { expectSmallStreams } from '../passage/files/expect-small-streams.ts';
import { FileFault } from '../passage/files/file-fault.ts';
import { findPdfText } from '../passage/files/find-pdf-text.ts';
import { hasLetters, type PdfPage } from '../passage/files/pdf-text.ts';
import { PDF_OPTIONS, readPdfPage } from '../passage/files/read-pdf-page.ts';
import type { OpenedText } from './opened-text.ts';

/**
 * Returns the text of a PDF, assembled by where it is drawn on the page. Running heads, page numbers and tables of
 * contents are left out. Scripts are not run. Rejects with `FileFault`.
 */
export async function readPdf(bytes: Uint8Array, engine: Analyzer): Promise<OpenedText> {
  expectSmallStreams(bytes);
  // The library takes over the bytes it is given, so it gets a copy.
  const task = getDocument({ ...PDF_OPTIONS, data: new Uint8Array(bytes), disableFontFace: true });
  try {
    const pdf = await task.promise;
    const pages: PdfPage[] = [];
    for (let n = 0; n < pdf.numPages; n++) {
      const page = await pdf.getPage(n + 1);
      pages.push(await readPdfPage(page, n));
      page.cleanup();
    }
    if (!pages.some(({ lines }) => hasLetters(lines)))
      throw new FileFault('There are no words in this PDF. If it was scanned, let a program read it first.');
    const isWord = (word: string): boolean =>
      /^(dictionary|derived)$/.test(engine.analyze(word).readings[0]?.source ?? '');
    const found = findPdfText(pages, isWord);
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

function asFault(error: unknown): FileFault {
  if (error instanceof FileFault) return error;
  return error instanceof Error && error.name === 'PasswordException'
    ? new FileFault('This PDF is locked by a password. Print it as a new PDF, and give that.')
    : new FileFault('This PDF is damaged. Get it again.');
}
