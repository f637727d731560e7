const STORE = 'Browsers let no extension into their own store. Open the story in another tab.';
const BROWSER_PAGE = 'This is a page of the browser itself. Open a story on the web, then press the button.';
const PDF = 'This is a PDF, which the browser shows with a viewer of its own. Open the text as a web page.';
const FILE =
  'This page is a file on your computer. Allow “access to file URLs” for Wordreach in the browser’s extension settings, then press the button again.';
const ERROR_PAGE = 'This page did not load. Load it again, then press the button.';

/** Why a page cannot be shaded, with what to do, by its address; null for an ordinary or an unknown one. */
export function explainClosedPage(url: string | undefined): string | null {
  if (!url) return null;
  const { protocol, host } = new URL(url);
  if (/^(chromewebstore\.google\.com|addons\.mozilla\.org|microsoftedge\.microsoft\.com)$/.test(host))
    return STORE;
  if (isPdf(url)) return PDF;
  if (protocol === 'file:') return FILE;
  return /^https?:$/.test(protocol) ? null : BROWSER_PAGE;
}

/** What to say of a page that could be read, but has not one word. */
export function explainEmptyPage(url: string): string {
  return isPdf(url) ? PDF : 'There are no words to read on this page.';
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
