import type { PagePassage, ShadedPage } from '../../contract/page-contract.ts';
import { textsIn } from '../../overlay/texts-in.ts';
import { nameOfPdf } from '../../passage/files/name-of-pdf.ts';
import type { OpenPdf } from '../../passage/files/open-pdf.ts';
import { hasLetters, type PdfPage, type PdfParagraph } from '../../passage/files/pdf-text.ts';
import { serveOwnPage } from '../practice/serve-own-page.ts';

/** The shading of the pages that are shown. */
export interface ServedPdf {
  /** Reads anew the pages shown; to be called when they are others. */
  lookAgain(): void;
}

export interface PdfGiven {
  readonly pdf: OpenPdf;
  /** Where it comes from; null for a file of this computer. */
  readonly url: string | null;
  readonly name: string;
  /** The element with the text of its pages. */
  readonly holder: HTMLElement;
  /** The paragraphs of the pages that are shown. */
  readonly shown: () => readonly PdfParagraph[];
  /** How many of its pages nobody has read. */
  readonly unread: () => number;
}

/**
 * Shades the pages of a PDF at once, and again when the toolbar button is pressed after it took the shading away. The text of this page
 * is that of the PDF, and nothing of the extension's own.
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
        words: () => ({
          ...page.words(),
          title,
          url: url ?? '',
          drawn: null,
          covered: 0,
          written: 0,
          language: pdf.language,
          pdf: { pages: pdf.pages.length, pictures: unread(), isForm: pdf.isForm, isOpen: true },
        }),
        takePassage: async () =>
          page.words().scope === 'selection' ? page.takePassage() : passageOf(shown()),
      };
    },
  });
  start();
  return { lookAgain: () => void shaded?.setScope('story') };
}

function passageOf(paragraphs: readonly PdfParagraph[]): PagePassage {
  return { lines: paragraphs.map(({ kind, level, text }) => ({ kind, level, text })), pictures: 0 };
}

/** The numbers of the pages that have no text, from 1. */
export function listPicturePages(pages: readonly PdfPage[]): number[] {
  return pages.flatMap(({ lines }, n) => (hasLetters(lines) ? [] : [n + 1]));
}

/** The text of the paragraphs on some pages, from 1. A paragraph that runs over a page gives the part that is there. */
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
