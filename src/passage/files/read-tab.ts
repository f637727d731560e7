import type { PageWords } from '../../contract/page-contract.ts';
import { askWords } from '../../host/page-talk/client.ts';
import { findPdfTab } from '../../host/page-talk/pdf-tab.ts';
import { say } from '../../wording/say.ts';
import { countWords } from '../count-words.ts';
import { cutLine } from '../cut-line.ts';
import { writeLines } from '../passage-lines.ts';
import { type PageText, readPageText, TakeFault } from '../read-page-text.ts';
import { FileFault } from './file-fault.ts';
import { nameOfPdf } from './name-of-pdf.ts';
import { hasLetters } from './pdf-text.ts';

/**
 * Reads the checked text of a tab. For a shaded page, this is the part that is checked. For a PDF, this is all of its
 * text. Rejects with `TakeFault` if there is no text or the text cannot be read.
 */
export async function readTabText(tab: number): Promise<PageText> {
  const pdf = await readPdfTab(tab).catch((error: unknown) => {
    throw error instanceof FileFault ? new TakeFault(error.message) : error;
  });
  if (!pdf) return readPageText(tab);
  if (pdf.text === '') throw new TakeFault(say('panel.pdfOfPictures'));
  return pdf;
}

/** Reads the words that are checked in a tab. Returns null if nothing is checked. Rejects like `readTabText`. */
export async function readTabWords(tab: number): Promise<PageWords | null> {
  if (await findPdfTab(tab)) return (await readTabText(tab)).page;
  return askWords(tab);
}

/**
 * Reads the text of the PDF in a tab, in the form of a page's text. Returns null if the tab shows no PDF. Rejects with
 * `FileFault`.
 */
export async function readPdfTab(tab: number): Promise<PageText | null> {
  if (!(await findPdfTab(tab))) return null;
  // The PDF reader is large and seldom needed, so it is loaded only here.
  const { openPdfTab } = await import('./open-pdf-tab.ts');
  const pdf = await openPdfTab(tab);
  if (!pdf) return null;
  pdf.close();
  const text = writeLines(pdf.paragraphs);
  const { words, skipped } = countWords(text, cutLine);
  const page: PageWords = {
    title: nameOfPdf(pdf, pdf.url),
    byline: pdf.author || null,
    date: null,
    url: pdf.url,
    words: [...words],
    skipped,
    scope: 'page',
    selection: false,
    foreign: [],
    drawn: null,
    written: 0,
    covered: 0,
    rows: false,
    paid: false,
    restless: false,
    language: pdf.language,
    takenAway: false,
    fault: null,
    silentFrames: 0,
    pdf: {
      pages: pdf.pages.length,
      pictures: pdf.pages.filter(({ lines }) => !hasLetters(lines)).length,
      isForm: pdf.isForm,
      isOpen: false,
    },
  };
  return { page, text, pictures: 0 };
}
