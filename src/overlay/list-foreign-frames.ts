/** A frame of another site, whose text Chromium lets nobody read from this page. */
export interface ForeignFrame {
  readonly url: string;
  readonly title: string;
}

/** Smaller frames hold buttons and counters, in CSS pixels. */
const WIDE = 200;
const HIGH = 100;

/** The frames of other sites that are drawn large enough to hold text, among those that `isPart`. */
export function listForeignFrames(doc: Document, isPart: (frame: Element) => boolean): ForeignFrame[] {
  const frames = [...doc.querySelectorAll<HTMLIFrameElement>('iframe, frame')];
  return frames
    .filter((frame) => frame.contentDocument === null && /^https?:/.test(frame.src))
    .filter((frame) => {
      const { width, height } = frame.getBoundingClientRect();
      return width >= WIDE && height >= HIGH && frame.checkVisibility({ visibilityProperty: true });
    })
    .filter(isPart)
    .map(({ src, title }) => ({ url: src, title: title.trim() || new URL(src).host }));
}
