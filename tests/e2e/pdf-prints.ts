import type { Page } from 'playwright-core';
import { storyParagraphs, wordsOf } from '../desk/pdf-layouts.ts';

/** A page for the browser to print, with its style and the orientation of its paper. */
interface Print {
  readonly css: string;
  /**
   * `before` comes before the story. `wrap` returns the markup around a paragraph; without `wrap`, a plain paragraph is
   * used.
   */
  readonly before?: string;
  readonly wrap?: (text: string, n: number) => string;
  readonly heads?: boolean;
  readonly landscape?: boolean;
}

const SERIF = 'font: 12pt/1.4 "DejaVu Serif"; text-align: justify; hyphens: auto;';

/** Adds soft hyphens where words may be divided, since Chromium has no hyphenation list on a bare machine. */
const divisible = (text: string): string => text.replace(/(\p{Ll}{3,4})(?=\p{Ll}{3})/gu, '$1\u00ad');

const PRINTS: Readonly<Record<string, Print>> = {
  'one column': { css: 'font: 12pt/1.5 "DejaVu Serif"' },
  'one column, no serifs': { css: 'font: 11pt/1.4 "DejaVu Sans"' },
  'a typewriter': { css: 'font: 10pt/1.4 "DejaVu Sans Mono"' },
  'stretched lines with hyphens': { css: SERIF },
  'two columns': { css: 'font: 10pt/1.4 "DejaVu Serif"; columns: 2' },
  'two columns with hyphens': { css: `${SERIF} font-size: 9pt; columns: 2` },
  'three columns with hyphens': { css: `${SERIF} font-size: 8pt; columns: 3` },
  ligatures: {
    css: 'font: 12pt/1.5 "DejaVu Sans"; font-variant-ligatures: common-ligatures discretionary-ligatures',
  },
  'letters set apart': { css: 'font: 12pt/1.6 "DejaVu Sans"; letter-spacing: 0.06em' },
  'letters set close': { css: 'font: 12pt/1.6 "DejaVu Serif"; letter-spacing: -0.02em; word-spacing: 0.1em' },
  'a landscape paper': { css: 'font: 14pt/1.5 "DejaVu Serif"; columns: 2', landscape: true },
  'heads and numbers': { css: SERIF, heads: true },
  'indented paragraphs': { css: `${SERIF} } p { margin: 0; text-indent: 1.5em` },
  'small capitals and bold': {
    css: 'font: 12pt/1.5 "DejaVu Serif"',
    wrap: (text) => `<p>${text.replace(/^(\S+ \S+)(.*?)(\S+)$/s, '<b>$1</b>$2<i>$3</i>')}</p>`,
  },
  'one word in many pieces': {
    css: 'font: 12pt/1.5 "DejaVu Serif"',
    wrap: (text) => `<p>${text.replace(/\b(\p{L})(\p{L}{3,})/gu, '<b>$1</b>$2')}</p>`,
  },
  'text up the page': { css: 'font: 12pt/1.5 "DejaVu Serif"; writing-mode: vertical-rl; height: 15cm' },
  'a list': { css: 'font: 12pt/1.5 "DejaVu Serif"', wrap: (text) => `<ul><li>${text}</li></ul>` },
  'a box beside the text': {
    css: 'font: 11pt/1.4 "DejaVu Serif" } .box { float: right; width: 3cm; height: 4cm; border: 1px solid; margin: 1em',
    before: '<div class="box"></div>',
  },
  'light on dark': {
    css: 'font: 12pt/1.5 "DejaVu Sans"; background: #223; color: #fed; -webkit-print-color-adjust: exact',
  },
  'narrow paper': { css: `${SERIF} width: 7cm` },
};

export interface PrintedLayout {
  readonly name: string;
  readonly words: readonly string[];
  print(page: Page): Promise<Uint8Array>;
}

/** Twenty PDF files, printed by Chromium. */
export const printedLayouts: readonly PrintedLayout[] = Object.entries(PRINTS).map(([name, print], n) => {
  const paragraphs = storyParagraphs(n + 1);
  const { before = '', wrap = (text: string) => `<p>${text}</p>`, css } = print;
  const html = `<!doctype html><html lang="en"><title>A print</title><style>body { ${css} }</style><body>${before}${paragraphs.map((text, at) => wrap(css.includes('hyphens') ? divisible(text) : text, at)).join('\n')}</body></html>`;
  return {
    name,
    words: wordsOf(paragraphs.join('\n')),
    async print(page) {
      await page.setContent(html);
      const session = await page.context().newCDPSession(page);
      const { data } = await session.send('Page.printToPDF', {
        landscape: print.landscape ?? false,
        printBackground: true,
        paperWidth: 6.5,
        paperHeight: 9,
        displayHeaderFooter: print.heads ?? false,
        headerTemplate: '<p style="font-size: 8pt; margin-left: 2cm">The Tarn Quay Post</p>',
        footerTemplate:
          '<p style="font-size: 8pt; margin-left: 2cm">Page <span class="pageNumber"></span> of <span class="totalPages"></span></p>',
      });
      await session.detach();
      return Uint8Array.from(Buffer.from(data, 'base64'));
    },
  };
});
