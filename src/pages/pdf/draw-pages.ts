import type { OpenPdf } from '../../passage/files/open-pdf.ts';
import { say } from '../../wording/say.ts';
import { layText, settleText } from './lay-text.ts';

/** The distance from the view, in CSS pixels, within which a page is drawn. A page farther away is removed from memory. */
const NEAR = 1200;
/** The largest scale at which a page is shown, in CSS pixels per point, and the largest number of pixels in its drawing. */
const LARGEST = 2;
const MOST_DOTS = 12_000_000;

/** The pages of a PDF in an element. */
export interface DrawnPages {
  /** Shows only these pages, numbered from 1. */
  show(pages: ReadonlySet<number>): void;
  /** Puts other text over a page, namely the text recognised in its picture. */
  layOver(page: number, text: HTMLElement): void;
}

/** Shows the pages of a PDF in an element, each with its text over it, until the signal is aborted. */
export function drawPages(pdf: OpenPdf, holder: HTMLElement, signal: AbortSignal): DrawnPages {
  const sheets = pdf.pages.map((page, n) => {
    const sheet = document.createElement('section');
    sheet.className = 'pdf-sheet';
    sheet.setAttribute('aria-label', say('pdf.page', { page: n + 1 }));
    sheet.style.setProperty('--pdf-width', `${page.width}px`);
    sheet.style.setProperty('--pdf-height', `${page.height}px`);
    sheet.append(layText(page, n, pdf.paragraphs));
    return sheet;
  });
  holder.replaceChildren(makeUnseenWords(), ...sheets);

  const widest = Math.max(...pdf.pages.map(({ width }) => width));
  const setScale = (): void => {
    const scale = Math.min((holder.clientWidth - 2) / widest, LARGEST, Math.max(1, 900 / widest));
    if (scale > 0) holder.style.setProperty('--pdf-scale', `${scale}`);
  };
  setScale();
  settleText(holder);
  const sizes = new ResizeObserver(setScale);
  sizes.observe(holder);

  /** The controller that stops the drawing, for each page near the view. */
  const drawings = new Map<Element, AbortController>();
  const near = new IntersectionObserver(
    (entries) => {
      for (const { target, isIntersecting } of entries) {
        drawings.get(target)?.abort();
        drawings.delete(target);
        if (!isIntersecting) continue;
        const drawing = new AbortController();
        drawings.set(target, drawing);
        const n = sheets.indexOf(target as HTMLElement);
        void drawPage(pdf, n, target as HTMLElement, drawing.signal).catch(() => undefined);
      }
    },
    { rootMargin: `${NEAR}px` },
  );
  for (const sheet of sheets) near.observe(sheet);
  signal.addEventListener(
    'abort',
    () => {
      sizes.disconnect();
      near.disconnect();
      for (const drawing of drawings.values()) drawing.abort();
      holder.replaceChildren();
    },
    { once: true },
  );
  return {
    show(pages) {
      for (const [n, sheet] of sheets.entries()) sheet.hidden = !pages.has(n + 1);
    },
    layOver(page, text) {
      const sheet = sheets[page - 1]!;
      const { hidden } = sheet;
      sheet.hidden = false;
      sheet.querySelector('.pdf-text')!.replaceWith(text);
      settleText(sheet);
      sheet.hidden = hidden;
    },
  };
}

/**
 * Returns a hidden paragraph of filler words. On a page of few words the overlay finds no story and checks the whole
 * page. With the filler the story is always the PDF, however short, and never the extension's own text around it.
 */
function makeUnseenWords(): HTMLElement {
  const unseen = document.createElement('p');
  unseen.hidden = true;
  unseen.textContent = 'unseen '.repeat(60);
  return unseen;
}

/** Draws a page under its text. The drawing is removed when the signal is aborted. */
async function drawPage(pdf: OpenPdf, n: number, sheet: HTMLElement, signal: AbortSignal): Promise<void> {
  const scale = sheet.clientWidth / pdf.pages[n]!.width;
  const canvas = await drawOn(pdf, n, scale * devicePixelRatio, signal);
  if (signal.aborted) return;
  canvas.setAttribute('aria-hidden', 'true');
  sheet.prepend(canvas);
  signal.addEventListener(
    'abort',
    () => {
      canvas.remove();
      // This gives the canvas's memory back at once.
      canvas.width = 0;
    },
    { once: true },
  );
}

/** Returns a drawing of a page with `scale` pixels per point. Rejects when aborted. */
export async function drawOn(
  pdf: OpenPdf,
  n: number,
  scale: number,
  signal: AbortSignal,
): Promise<HTMLCanvasElement> {
  const page = await pdf.document.getPage(n + 1);
  signal.throwIfAborted();
  const { width, height } = pdf.pages[n]!;
  const most = Math.sqrt(MOST_DOTS / (width * height));
  const viewport = page.getViewport({ scale: Math.min(scale, most) });
  const canvas = document.createElement('canvas');
  canvas.width = Math.ceil(viewport.width);
  canvas.height = Math.ceil(viewport.height);
  const task = page.render({ canvas, viewport });
  const stop = (): void => task.cancel();
  signal.addEventListener('abort', stop, { once: true });
  try {
    await task.promise;
  } finally {
    signal.removeEventListener('abort', stop);
    page.cleanup();
  }
  return canvas;
}
