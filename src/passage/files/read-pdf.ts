import type { PDFDocumentProxy, PDFPageProxy } from 'pdfjs-dist';
import { GlobalWorkerOptions, getDocument, OPS, PDFWorker } from 'pdfjs-dist/legacy/build/pdf.mjs';
import workerAddress from 'pdfjs-dist/legacy/build/pdf.worker.min.mjs?url';
import { loadEngine } from '../../host/data/load-engine.ts';
import { say } from '../../wording/say.ts';
import { writeLines } from '../passage-lines.ts';
import { dropRunningHeads } from './drop-running-heads.ts';
import { expectSmallStreams } from './expect-small-streams.ts';
import { FileFault } from './file-fault.ts';
import type { OpenedText } from './opened-file.ts';
import { findPdfLines } from './pdf-lines.ts';
import { findPdfParagraphs } from './pdf-paragraphs.ts';
import type { PdfLine } from './pdf-text.ts';

/** Longer ones are books. */
const MOST_PAGES = 300;
/** A page is read in a moment; one that is not may never be, in milliseconds. */
const LONGEST = 10_000;

/** The text of a PDF, put together from where it is drawn. Its scripts are not run. Rejects with `FileFault`. */
export async function readPdf(bytes: Uint8Array, name: string): Promise<OpenedText> {
  expectSmallStreams(bytes);
  GlobalWorkerOptions.workerSrc = workerAddress;
  const worker = PDFWorker.create({ verbosity: 0 });
  // A worker that is stopped before it is ready rejects; whoever reads with it is told by getDocument.
  worker.promise.catch(() => undefined);
  let timer: ReturnType<typeof setTimeout> | undefined;
  let giveUp = (): void => undefined;
  const tooLong = new Promise<never>((_, reject) => {
    giveUp = () => reject(new FileFault(say('files.slowPdf')));
  });
  const goOn = (): void => {
    clearTimeout(timer);
    timer = setTimeout(giveUp, LONGEST);
  };
  try {
    goOn();
    return await Promise.race([readWith(worker, bytes, name, goOn), tooLong]);
  } catch (error) {
    throw asFault(error);
  } finally {
    clearTimeout(timer);
    worker.destroy();
  }
}

/** `goOn` is called after each page. */
async function readWith(
  worker: PDFWorker,
  data: Uint8Array,
  name: string,
  goOn: () => void,
): Promise<OpenedText> {
  const pdf = await getDocument({
    data,
    worker,
    verbosity: 0,
    disableFontFace: true,
    useWasm: false,
    enableXfa: false,
    isEvalSupported: false,
  }).promise;
  if (pdf.numPages > MOST_PAGES) throw new FileFault(say('files.longPdf', { pages: pdf.numPages }));
  const pages: PdfLine[][] = [];
  let pictures = 0;
  for (let n = 0; n < pdf.numPages; n++) {
    const page = await pdf.getPage(n + 1);
    pages.push(await readLinesOf(page, n));
    pictures += await countPicturesOf(page);
    page.cleanup();
    goOn();
  }
  const lines = dropRunningHeads(pages).flat();
  if (!lines.some(({ text }) => /\p{L}/u.test(text)))
    throw new FileFault(pictures > 0 ? say('files.pdfOfPictures') : say('files.noWordsInPdf'));
  const engine = await loadEngine();
  const isWord = (word: string): boolean =>
    /^(dictionary|derived)$/.test(engine.analyze(word).readings[0]?.source ?? '');
  const found = findPdfParagraphs(lines, isWord);
  return {
    title: found.find(({ kind }) => kind === 'heading')?.text ?? ((await readTitle(pdf)) || name),
    text: writeLines(found),
    leftOut: { pictures, footnotes: 0 },
  };
}

async function readLinesOf(page: PDFPageProxy, n: number): Promise<PdfLine[]> {
  const { items } = await page.getTextContent();
  const pieces = items.flatMap((item) => {
    if (!('str' in item)) return [];
    const [a, b, c, d, x, y] = item.transform as [number, number, number, number, number, number];
    // Text that stands on its side is a margin's.
    if (Math.abs(b) > Math.abs(a)) return [];
    return [{ text: item.str, x, y, width: item.width, size: Math.hypot(c, d) || item.height || 1 }];
  });
  return findPdfLines(pieces, n);
}

const DRAWS_PICTURE = new Set<number>([
  OPS.paintImageXObject,
  OPS.paintInlineImageXObject,
  OPS.paintImageXObjectRepeat,
]);

/** Signs of a few dots are no pictures. */
async function countPicturesOf(page: PDFPageProxy): Promise<number> {
  const SIGN = 32;
  const { fnArray, argsArray } = await page.getOperatorList();
  return fnArray.filter((operator, n) => {
    if (!DRAWS_PICTURE.has(operator)) return false;
    const [, width, height] = argsArray[n] as [unknown, unknown, unknown];
    return !(typeof width === 'number' && typeof height === 'number' && (width < SIGN || height < SIGN));
  }).length;
}

async function readTitle(pdf: PDFDocumentProxy): Promise<string> {
  const { info } = await pdf.getMetadata();
  const title = (info as { readonly Title?: unknown }).Title;
  return typeof title === 'string' ? title.trim() : '';
}

function asFault(error: unknown): FileFault {
  if (error instanceof FileFault) return error;
  if (error instanceof Error && error.name === 'PasswordException')
    return new FileFault(say('files.lockedPdf'));
  return new FileFault(say('files.damagedPdf'));
}
