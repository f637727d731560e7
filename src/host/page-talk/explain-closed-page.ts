import type { PageWords } from '../../contract/page-contract.ts';
import { say } from '../../wording/say.ts';

/**
 * Explains by a page's address why the page cannot be shaded and what to do. Returns null for an ordinary or an unknown
 * address.
 */
export function explainClosedPage(url: string | undefined): string | null {
  if (!url) return null;
  const { protocol, host } = new URL(url);
  if (/^(chromewebstore\.google\.com|addons\.mozilla\.org|microsoftedge\.microsoft\.com)$/.test(host))
    return say('host.store');
  if (isPdf(url)) return say('host.pdf');
  if (protocol === 'file:') return say('host.localFile');
  if (url.startsWith('about:reader')) return say('host.readerView');
  return /^https?:$/.test(protocol) ? null : say('host.browserPage');
}

/** Returns the sentence that explains why a text has no words. */
export function explainEmptyText({ url, scope, drawn }: Pick<PageWords, 'url' | 'scope' | 'drawn'>): string {
  if (scope === 'selection') return say('host.emptySelection');
  if (isPdf(url)) return say('host.pdf');
  if (drawn === 'canvas') return say('host.canvas');
  return drawn === 'picture' ? say('host.picture') : say('host.noWords');
}

/**
 * Explains why a page cannot be shaded. The reason comes from the words of the browser's refusal (seen in Chromium
 * 156), since the browser hides the address of its own pages. Returns null when the page only lacks a press of the
 * button.
 */
export function explainRefusal(error: unknown): string | null {
  const message = error instanceof Error ? error.message : String(error);
  if (/extensions gallery/.test(message)) return say('host.store');
  if (/error page/.test(message)) return say('host.errorPage');
  if (/\bfile:/.test(message)) return say('host.localFile');
  return /\b(chrome|edge|about|devtools)[\w-]*:|chrome-extension/.test(message)
    ? say('host.browserPage')
    : null;
}

function isPdf(url: string): boolean {
  return /\.pdf$/i.test(new URL(url).pathname);
}
