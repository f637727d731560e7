import type { PageWords } from './messages.ts';

const STORE =
  'Browsers let no extension into their own store. Open the story in another tab, or paste its text at the desk.';
const BROWSER_PAGE = 'This is a page of the browser itself. Open a story on the web, then press the button.';
const PDF =
  'This is a PDF, which the browser shows with a viewer of its own. Copy its text and paste it at the desk.';
const CANVAS =
  'This page draws its letters as a picture, as some editors do. Copy the text and paste it at the desk.';
const PICTURE = 'This page is mostly a picture, and text in a picture cannot be read. Type it at the desk.';
const FILE =
  'This page is a file on your computer. Open the file at the desk, or allow “access to file URLs” for Wordreach in the browser’s extension settings.';
const READER =
  'Firefox lets no extension into its reader view. Leave the reader view, then press the button.';
const ERROR_PAGE = 'This page did not load. Load it again, then press the button.';

/** Why a page cannot be shaded, with what to do, by its address; null for an ordinary or an unknown one. */
export function explainClosedPage(url: string | undefined): string | null {
  if (!url) return null;
  const { protocol, host } = new URL(url);
  if (/^(chromewebstore\.google\.com|addons\.mozilla\.org|microsoftedge\.microsoft\.com)$/.test(host))
    return STORE;
  if (isPdf(url)) return PDF;
  if (protocol === 'file:') return FILE;
  if (url.startsWith('about:reader')) return READER;
  return /^https?:$/.test(protocol) ? null : BROWSER_PAGE;
}

/** What to say of a text without words. */
export function explainEmptyText({ url, scope, drawn }: Pick<PageWords, 'url' | 'scope' | 'drawn'>): string {
  if (scope === 'selection') return 'There are no words in what is selected. Select some text of the page.';
  if (drawn === 'pdf' || isPdf(url)) return PDF;
  if (drawn === 'canvas') return CANVAS;
  return drawn === 'picture' ? PICTURE : 'There are no words to read on this page.';
}

/**
 * Why a page cannot be shaded, by the words in which the browser refused (seen in Chromium 156), since it hides the address of its
 * own pages; null when the page only lacks the press of the button.
 */
export function explainRefusal(error: unknown): string | null {
  const message = error instanceof Error ? error.message : String(error);
  if (/extensions gallery/.test(message)) return STORE;
  if (/error page/.test(message)) return ERROR_PAGE;
  if (/\bfile:/.test(message)) return FILE;
  return /\b(chrome|edge|about|devtools)[\w-]*:|chrome-extension/.test(message) ? BROWSER_PAGE : null;
}

function isPdf(url: string): boolean {
  return /\.pdf$/i.test(new URL(url).pathname);
}
