import type { DrawnText, HiddenText, UnreadFrame } from '../contract/page-contract.ts';
import { countWrittenWords } from './count-written-words.ts';
import { findDrawnText } from './find-drawn-text.ts';
import { findHiddenText } from './find-hidden-text.ts';
import { listUnreadFrames } from './list-unread-frames.ts';
import type { ReadBlock } from './page-text.ts';
import { nextTurn } from './work-in-slices.ts';

/** The text of a page that is missing from the count, or counted but not visible. */
export interface UnreadText extends HiddenText {
  readonly foreign: readonly UnreadFrame[];
  readonly drawn: DrawnText | null;
  readonly written: number;
}

export interface UnreadTextWatch {
  /** Looks for such text in slices. Gives the earlier answer if nothing has changed since. */
  look(): Promise<UnreadText>;
  /** Notes that the page or its scope has changed. */
  forget(): void;
}

export type WatchUnreadText = typeof watchUnreadText;

/**
 * Watches a page for text that is not read. The browser must be asked for the place of every block, so each state of the
 * page is looked at only once. `isPart` tells whether a frame is in the scope.
 */
export function watchUnreadText(
  doc: Document,
  blocks: () => ReadonlySet<ReadBlock>,
  isPart: (frame: Element) => boolean,
  signal: AbortSignal,
): UnreadTextWatch {
  let known: Promise<Omit<UnreadText, 'written'>> | undefined;
  const forget = (): void => {
    known = undefined;
  };
  const options = { passive: true, capture: true, signal };
  for (const type of ['scroll', 'resize', 'load']) addEventListener(type, forget, options);

  async function lookNow(): Promise<Omit<UnreadText, 'written'>> {
    const foreign = listUnreadFrames(doc, isPart);
    await nextTurn();
    const drawn = findDrawnText(doc);
    await nextTurn();
    return { foreign, drawn, ...(await findHiddenText(doc, blocks(), signal)) };
  }
  return {
    async look() {
      known ??= lookNow();
      // A field has no event of its own for a change by a script, so the words in fields are counted each time.
      return { ...(await known), written: countWrittenWords(doc) };
    },
    forget,
  };
}
