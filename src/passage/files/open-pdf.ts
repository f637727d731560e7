import type { PDFDocumentProxy } from 'pdfjs-dist';
import { GlobalWorkerOptions, getDocument, PDFWorker } from 'pdfjs-dist/legacy/build/pdf.mjs';
import workerAddress from 'pdfjs-dist/legacy/build/pdf.worker.min.mjs?url';
import { loadEngine } from '../../host/data/load-engine.ts';
import { say } from '../../wording/say.ts';
import { expectSmallStreams } from './expect-small-streams.ts';
import { FileFault } from './file-fault.ts';
import { findPdfText } from './find-pdf-text.ts';
import type { PdfPage, PdfParagraph } from './pdf-text.ts';
import { PDF_OPTIONS, readPdfPage } from './read-pdf-page.ts';

/** The most pages of a PDF that is read. Longer PDFs are books. */
const MOST_PAGES = 300;
/** The folder where the build puts the code that unpacks the pictures of scans (`wxt.config.ts`). */
const READER_FOLDER = '/pdf-reader/';
/**
 * The longest time that a page may take, in milliseconds. A page is usually read in a moment; a page that takes longer
 * may never be read.
 */
const LONGEST = 10_000;

/** A PDF that has been read. It may be drawn until it is closed. */
export interface OpenPdf {
  readonly document: PDFDocumentProxy;
  readonly pages: readonly PdfPage[];
  /** Returns the paragraphs of pages such as the pages of this PDF. */
  readonly findParagraphs: (pages: readonly PdfPage[]) => readonly PdfParagraph[];
  readonly paragraphs: readonly PdfParagraph[];
  /** The title and the author that the file states. Empty if the file states none. */
  readonly title: string;
  readonly author: string;
  /** The language that the file states (`en-GB`), or an empty string if the file states none. */
  readonly language: string;
  /** Whether the file has fields to fill in. Nothing in these fields is read. */
  readonly isForm: boolean;
  /** Stops the worker of the PDF and frees its memory. */
  close(): void;
}

export interface PdfOptions {
  /** Whether the pages are to be drawn too. In that case, the fonts of the PDF are loaded. */
  readonly draws?: boolean;
  /** Called with the number of pages that have been read, and the number of all pages. */
  readonly onPage?: (done: number, all: number) => void;
  readonly signal?: AbortSignal;
}

/** Reads a whole PDF in a worker. Scripts in the PDF are not run. Rejects with `FileFault`, or when aborted. */
export async function openPdf(bytes: Uint8Array, options: PdfOptions = {}): Promise<OpenPdf> {
  expectSmallStreams(bytes);
  GlobalWorkerOptions.workerSrc = workerAddress;
  const worker = PDFWorker.create({ verbosity: 0 });
  // The promise of a worker rejects if the worker is stopped before it is ready. The code that reads with the worker
  // gets this error from getDocument.
  worker.promise.catch(() => undefined);
  let timer: ReturnType<typeof setTimeout> | undefined;
  let giveUp = (): void => undefined;
  const tooLong = new Promise<never>((_, reject) => {
    giveUp = () => reject(new FileFault(say('files.slowPdf')));
    options.signal?.addEventListener('abort', () => reject(options.signal!.reason), { once: true });
  });
  const goOn = (): void => {
    clearTimeout(timer);
    timer = setTimeout(giveUp, LONGEST);
  };
  try {
    goOn();
    return await Promise.race([readWith(worker, bytes, options, goOn), tooLong]);
  } catch (error) {
    worker.destroy();
    throw options.signal?.aborted ? error : asFault(error);
  } finally {
    clearTimeout(timer);
  }
}

/** Reads a PDF with a worker, and calls `goOn` after each page. */
async function readWith(
  worker: PDFWorker,
  data: Uint8Array,
  { draws = false, onPage }: PdfOptions,
  goOn: () => void,
): Promise<OpenPdf> {
  const task = getDocument({
    ...PDF_OPTIONS,
    ...(draws && { useWasm: true, wasmUrl: new URL(READER_FOLDER, location.href).href }),
    data,
    worker,
    disableFontFace: !draws,
  });
  const document = await task.promise;
  const { numPages } = document;
  if (numPages > MOST_PAGES) throw new FileFault(say('files.longPdf', { pages: numPages }));
  const { info } = await document.getMetadata();
  const said = info as Readonly<Record<string, unknown>>;
  // An XFA form has only one page, which asks for another program.
  if (said.IsXFAPresent === true && numPages === 1) throw new FileFault(say('files.formPdf'));
  const pages: PdfPage[] = [];
  for (let n = 0; n < numPages; n++) {
    const page = await document.getPage(n + 1);
    pages.push(await readPdfPage(page, n));
    page.cleanup();
    onPage?.(n + 1, numPages);
    goOn();
  }
  const engine = await loadEngine();
  const isWord = (word: string): boolean =>
    /^(dictionary|derived)$/.test(engine.analyze(word).readings[0]?.source ?? '');
  const findParagraphs = (read: readonly PdfPage[]) => findPdfText(read, isWord);
  return {
    document,
    pages,
    findParagraphs,
    paragraphs: findParagraphs(pages),
    title: asText(said.Title),
    author: asText(said.Author),
    language: asText(said.Language),
    isForm: said.IsAcroFormPresent === true,
    close: () => {
      void task.destroy();
      worker.destroy();
    },
  };
}

function asText(said: unknown): string {
  return typeof said === 'string' ? said.trim() : '';
}

function asFault(error: unknown): FileFault {
  if (error instanceof FileFault) return error;
  if (error instanceof Error && error.name === 'PasswordException')
    return new FileFault(say('files.lockedPdf'));
  return new FileFault(say('files.damagedPdf'));
}
