import type { OpenPdf } from '../../passage/files/open-pdf.ts';
import type { PdfPage } from '../../passage/files/pdf-text.ts';
import { readPdfPicture } from '../../passage/files/read-pdf-picture.ts';
import { drawOn } from './draw-pages.ts';

/** Pixels per point: 250 per inch, as in a good scan. */
const SCALE = 250 / 72;

/**
 * A picture page of a PDF. `read` is missing when the page is about to be read, and later has the page with the text of
 * its picture.
 */
export interface PicturePage {
  readonly page: number;
  readonly read?: PdfPage;
}

/**
 * Reads the given pages of a PDF, which are pictures, one after the other on this machine. Page numbers start at 1.
 * Rejects with `PictureFault`, or when aborted. An abort also ends the reader.
 */
export async function* readPicturePages(
  pdf: OpenPdf,
  pages: readonly number[],
  signal: AbortSignal,
): AsyncGenerator<PicturePage> {
  const { openPictureReader } = await import('../../picture/open-picture-reader.ts');
  const reader = await openPictureReader({ signal });
  try {
    for (const page of pages) {
      yield { page };
      const canvas = await drawOn(pdf, page - 1, SCALE, signal);
      const reading = await reader.read(canvas, { signal });
      const of = pdf.pages[page - 1]!;
      yield { page, read: readPdfPicture(of, page - 1, reading, canvas.width / of.width) };
      canvas.width = 0;
    }
  } finally {
    reader.close();
  }
}
