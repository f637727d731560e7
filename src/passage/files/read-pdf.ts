import type { PDFDocumentProxy, PDFPageProxy } from 'pdfjs-dist';
import { OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { say } from '../../wording/say.ts';
import { writeLines } from '../passage-lines.ts';
import { FileFault } from './file-fault.ts';
import { openPdf } from './open-pdf.ts';
import type { OpenedText } from './opened-file.ts';
import { hasLetters } from './pdf-text.ts';

/**
 * Reads the text of a PDF and orders it by the positions where it is drawn. Scripts in the file are not run. Rejects
 * with `FileFault`.
 */
export async function readPdf(bytes: Uint8Array, name: string): Promise<OpenedText> {
  const { document, pages, paragraphs, title, close } = await openPdf(bytes);
  try {
    const pictures = await countPictures(document).catch(() => 0);
    if (!pages.some(({ lines }) => hasLetters(lines)))
      throw new FileFault(pictures > 0 ? say('files.pdfOfPictures') : say('files.noWordsInPdf'));
    return {
      title: paragraphs.find(({ kind }) => kind === 'heading')?.text ?? (title || name),
      text: writeLines(paragraphs),
      leftOut: { pictures, footnotes: 0 },
    };
  } finally {
    close();
  }
}

const DRAWS_PICTURE = new Set<number>([
  OPS.paintImageXObject,
  OPS.paintInlineImageXObject,
  OPS.paintImageXObjectRepeat,
]);

/**
 * The longest time for counting pictures, in milliseconds. Unpacking pictures is slow, and the text does not wait
 * longer for their number.
 */
const LONGEST = 5000;

async function countPictures(document: PDFDocumentProxy): Promise<number> {
  const end = performance.now() + LONGEST;
  let pictures = 0;
  for (let n = 1; n <= document.numPages && performance.now() < end; n++) {
    const page = await document.getPage(n);
    pictures += await countPicturesOf(page);
    page.cleanup();
  }
  return pictures;
}

/** Counts the pictures on a page. Signs of a few pixels are skipped. */
async function countPicturesOf(page: PDFPageProxy): Promise<number> {
  const SIGN = 32;
  const { fnArray, argsArray } = await page.getOperatorList();
  return fnArray.filter((operator, n) => {
    if (!DRAWS_PICTURE.has(operator)) return false;
    const [, width, height] = argsArray[n] as [unknown, unknown, unknown];
    return !(typeof width === 'number' && typeof height === 'number' && (width < SIGN || height < SIGN));
  }).length;
}
