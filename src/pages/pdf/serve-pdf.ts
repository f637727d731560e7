import type { PagePassage, ShadedPage } from '../../contract/page-contract.ts';
import { openCardLine } from '../../host/page-talk/card-line.ts';
import { hearMessages } from '../../host/page-talk/hear-messages.ts';
import { answer, isQuestion } from '../../host/page-talk/messages.ts';
import { hostPage, offerPart } from '../../host/page-talk/page-host.ts';
import { createFramedCard } from '../../overlay/card/open-framed-card.ts';
import { openPlainCard } from '../../overlay/card/open-plain-card.tsx';
import { startCards } from '../../overlay/card/start-cards.ts';
import { openVeil } from '../../overlay/draw-veil.ts';
import type { PageParts } from '../../overlay/page/page-parts.ts';
import { startPage } from '../../overlay/page/start-page.ts';
import { textsIn } from '../../overlay/texts-in.ts';
import { nameOfPdf } from '../../passage/files/name-of-pdf.ts';
import type { OpenPdf } from '../../passage/files/open-pdf.ts';
import { hasLetters, type PdfPage, type PdfParagraph } from '../../passage/files/pdf-text.ts';

/** The shading of the pages that are shown. */
export interface ServedPdf {
  /** Reads anew what is shown; to be called when that is another. */
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
 * Shades the pages of a PDF at once, and again when the toolbar button is pressed after it took the shading away. Browsers put no script
 * into a page of an extension, so it holds the content script itself. The text of this page is that of the PDF, and nothing of the
 * extension's own.
 */
export function servePdf({ pdf, url, name, holder, shown, unread }: PdfGiven): ServedPdf {
  const title = nameOfPdf(pdf, name);
  let shaded: ShadedPage | null = null;
  const openCard = createFramedCard({ openLine: openCardLine });
  offerPart<PageParts>({
    card: (doc, sources, options) => startCards(doc, sources, { ...options, openCard }),
    'plain-card': openPlainCard,
    veil: openVeil,
    article: () => ({ title, byline: pdf.author || null, date: null, texts: textsIn(holder) }),
  });
  const start = (): true => {
    hostPage<PageParts>((options) => {
      const page = startPage(document, options);
      shaded = page;
      options.signal.addEventListener('abort', () => {
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
    });
    return true;
  };
  hearMessages((message, sender) =>
    isQuestion(message, 'page') ? answer({ start }, message, sender) : undefined,
  );
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

/** What the paragraphs say on some pages, from 1: of one that runs over, the part that is there. */
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
