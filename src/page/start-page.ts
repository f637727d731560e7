import type { WordPlace } from '../overlay/find-places.ts';
import { type Overlay, type OverlayOptions, startOverlay } from '../overlay/start-overlay.ts';

/** The shading of one page with its word cards. */
export interface ShadedPage extends Overlay {
  /** Goes to the next (1) or previous (-1) word that is not yet decodable. */
  step(direction: 1 | -1): void;
}

/** Starts shading in a document. */
export function startPage(doc: Document, options: OverlayOptions): ShadedPage {
  const overlay = startOverlay(doc, options);
  let at: WordPlace | null = null;
  return {
    ...overlay,
    step(direction) {
      at = overlay.finder.next(at, direction, (other) => overlay.standingOf(other) === 'beyond');
      if (at) overlay.pointAt(at);
    },
  };
}
