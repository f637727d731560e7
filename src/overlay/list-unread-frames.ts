import type { UnreadFrame } from '../contract/page-contract.ts';

/** The least size of a frame in CSS pixels. Smaller frames hold buttons and counters. */
const WIDE = 200;
const HIGH = 100;
/** The share of the view from which a frame counts as filling the view. Drawn text has the same limit. */
const MOST = 0.4;

/**
 * Lists the frames that cannot be read and are large enough to hold text, among the frames that pass `isPart`. In some
 * browsers, pressing the extension's button gives access to some of these frames. The panel removes such frames from
 * the list by their addresses.
 */
export function listUnreadFrames(doc: Document, isPart: (frame: Element) => boolean): UnreadFrame[] {
  return [...doc.querySelectorAll('iframe, frame, embed, object')].flatMap((frame) => {
    const { width, height } = frame.getBoundingClientRect();
    if (width < WIDE || height < HIGH || !frame.checkVisibility({ visibilityProperty: true })) return [];
    // This check comes last. Looking into a frame takes the browser some 5 ms, and a page may have thirty small frames.
    const why = whyUnread(frame);
    if (!why || !isPart(frame)) return [];
    const url = addressOf(frame);
    const title = frame.getAttribute('title')?.trim() || nameOf(url);
    return [{ url, title, why, fills: width * height > innerWidth * innerHeight * MOST }];
  });
}

function whyUnread(frame: Element): UnreadFrame['why'] | null {
  if (isPdf(frame)) return 'pdf';
  const { contentDocument } = frame as Partial<HTMLIFrameElement>;
  if (contentDocument !== null || /^(?:EMBED|OBJECT)$/.test(frame.tagName)) return null;
  const url = addressOf(frame);
  const isSealed = frame.getAttribute('sandbox')?.includes('allow-same-origin') === false;
  // A frame with its text in its address (data:) becomes readable when the button is pressed.
  if (isSealed && !url.startsWith('data:')) return 'sealed';
  return /^https?:/.test(url) ? 'site' : null;
}

function isPdf(frame: Element): boolean {
  if (frame.getAttribute('type') === 'application/pdf') return true;
  if ((frame as Partial<HTMLIFrameElement>).contentDocument?.contentType === 'application/pdf') return true;
  return /^(?:https?|file):[^?#]*\.pdf(?:[?#]|$)/i.test(addressOf(frame));
}

/** A frame with its text in an attribute (srcdoc) gives its address as `about:srcdoc`. */
function addressOf(frame: Element): string {
  if (frame.hasAttribute('srcdoc')) return 'about:srcdoc';
  const { src, data } = frame as Partial<HTMLIFrameElement & HTMLObjectElement>;
  return src || data || '';
}

function nameOf(url: string): string {
  if (!/^(?:https?|file):/.test(url)) return '';
  const { host, pathname } = new URL(url);
  return /\.pdf$/i.test(pathname) ? decodeURIComponent(pathname.replace(/^.*\//, '')) : host;
}
