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

/** Longer ones are books. */
const MOST_PAGES = 300;
/** Where the build puts what unpacks the pictures of scans (`wxt.config.ts`). */
const READER_FOLDER = '/pdf-reader/';
/** A page is read in a moment; one that is not may never be, in milliseconds. */
const LONGEST = 10_000;

/** A PDF that has been read and may be drawn, until it is closed. */
export interface OpenPdf {
  readonly document: PDFDocumentProxy;
  readonly pages: readonly PdfPage[];
  /** The text read of pages such as its own. */
  readonly findParagraphs: (pages: readonly PdfPage[]) => readonly PdfParagraph[];
  readonly paragraphs: readonly PdfParagraph[];
  /** The title that the file gives itself, and its author; empty where it does not say. */
  readonly title: string;
  readonly author: string;
  /** The language it says it is in (`en-GB`); empty where it does not say. */
  readonly language: string;
  /** Whether it has fields to fill in, of which nothing is read. */
  readonly isForm: boolean;
  /** Stops its worker and gives its memory back. */
  close(): void;
}

export interface PdfOptions {
  /** Whether its pages are to be drawn too: its letters are loaded then. */
  readonly draws?: boolean;
  /** Told how many pages have been read, of how many. */
  readonly onPage?: (done: number, all: number) => void;
  readonly signal?: AbortSignal;
}

/** Reads all of a PDF in a worker. Its scripts are not run. Rejects with `FileFault`, or when aborted. */
export async function openPdf(bytes: Uint8Array, options: PdfOptions = {}): Promise<OpenPdf> {
  expectSmallStreams(bytes);
  GlobalWorkerOptions.workerSrc = workerAddress;
  const worker = PDFWorker.create({ verbosity: 0 });
  // A worker that is stopped before it is ready rejects; whoever reads with it is told by getDocument.
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

/** `goOn` is called after each page. */
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
  // Such a form has one page that asks for another program.
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
