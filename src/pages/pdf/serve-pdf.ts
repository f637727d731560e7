import type { PagePassage, ShadedPage } from '../../contract/page-contract.ts';
import { textsIn } from '../../overlay/texts-in.ts';
import { nameOfPdf } from '../../passage/files/name-of-pdf.ts';
import type { OpenPdf } from '../../passage/files/open-pdf.ts';
import { hasLetters, type PdfPage, type PdfParagraph } from '../../passage/files/pdf-text.ts';
import { serveOwnPage } from '../practice/serve-own-page.ts';

/** Controls the shading of the pages that are shown. */
export interface ServedPdf {
  /** Reads the shown pages again. Call this when other pages are shown. */
  lookAgain(): void;
}

export interface PdfGiven {
  readonly pdf: OpenPdf;
  /** The address of the PDF; null for a file on this computer. */
  readonly url: string | null;
  readonly name: string;
  /** The element with the text of the PDF's pages. */
  readonly holder: HTMLElement;
  /** The paragraphs of the pages that are shown. */
  readonly shown: () => readonly PdfParagraph[];
  /** The number of picture pages that have not been read. */
  readonly unread: () => number;
}

/**
 * Shades the pages of a PDF at once. If the toolbar button has removed the shading, the next press shades the pages
 * again. The text of this page is only the PDF's text, without the extension's own words.
 */
export function servePdf({ pdf, url, name, holder, shown, unread }: PdfGiven): ServedPdf {
  const title = nameOfPdf(pdf, name);
  let shaded: ShadedPage | null = null;
  const start = serveOwnPage({
    article: async () => ({ title, byline: pdf.author || null, date: null, texts: textsIn(holder) }),
    onStart: (page, signal) => {
      shaded = page;
      signal.addEventListener('abort', () => {
        shaded = null;
      });
      return {
        ...page,
        words: async () => ({
          ...(await page.words()),
          title,
          url: url ?? '',
          drawn: null,
          covered: 0,
          written: 0,
          language: pdf.language,
          pdf: { pages: pdf.pages.length, pictures: unread(), isForm: pdf.isForm, isOpen: true },
        }),
        takePassage: async () =>
          (await page.words()).scope === 'selection' ? page.takePassage() : passageOf(shown()),
      };
    },
  });
  start();
  return { lookAgain: () => void shaded?.setScope('story') };
}

function passageOf(paragraphs: readonly PdfParagraph[]): PagePassage {
  return { lines: paragraphs.map(({ kind, level, text }) => ({ kind, level, text })), pictures: 0 };
}

/** Returns the numbers of the pages without text, counted from 1. */
export function listPicturePages(pages: readonly PdfPage[]): number[] {
  return pages.flatMap(({ lines }, n) => (hasLetters(lines) ? [] : [n + 1]));
}

/**
 * Returns the paragraphs on the given pages, numbered from 1. If a paragraph continues on other pages, only its part on
 * the given pages is returned.
 */
export function takeFromPages(
  paragraphs: readonly PdfParagraph[],
  pages: ReadonlySet<number>,
): PdfParagraph[] {
  return paragraphs.flatMap((paragraph) => {
    const parts = paragraph.parts.filter(({ line }) => pages.has(line.page + 1));
    if (parts.length === paragraph.parts.length) return [paragraph];
    if (parts.length === 0) return [];
    const text = parts.reduce((soFar, { line }, n) => {
      const joint = parts[n - 1]?.joint;
      if (joint === undefined) return line.text;
      return joint === 'blank'
        ? `${soFar} ${line.text}`
        : soFar.replace(joint === 'hyphen' ? /.$/u : '', '') + line.text;
    }, '');
    return [{ ...paragraph, text: text.replaceAll('\u00ad', ''), parts }];
  });
}
