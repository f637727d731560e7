/**
 * The record of a visit to one page. During the visit, the button of the built extension was pressed on the page, the
 * panel was read, and the button was pressed again.
 */
export interface Visit {
  /** Milliseconds from the press to the first marks, or null if no marks appeared. */
  readonly marks: number | null;
  /** Milliseconds from the press to the panel's figure, or null if no figure appeared. */
  readonly figure: number | null;
  /** The panel's figure (`80.3%`), or the text that the panel showed in its place. */
  readonly says: string;
  /** The words that were read in the checked text, with their counts. */
  readonly words: readonly (readonly [word: string, count: number])[];
  readonly scope: string;
  /** The longest task of the page's thread in milliseconds, or null if the browser does not report tasks. */
  readonly longestTask: number | null;
  /** Uncaught errors of page, background and panel. */
  readonly errors: readonly string[];
  /** The state of the page before the press, while the page was shaded, and after the second press. */
  readonly states: readonly PageState[];
}

/** The parts of a page that the extension must not change. */
export interface PageState {
  readonly html: string;
  readonly scroll: number;
  readonly selection: string;
}

/** A real browser with the built extension that visits pages one after the other. */
export interface SweepBrowser {
  visit(address: string): Promise<Visit>;
  close(): Promise<void>;
}

/** The longest time to wait for marks and for the figure, in milliseconds. */
export const PATIENCE = 10_000;

/** The functions below run in the page that is visited. */

/** Scrolls a little and selects a few words, so that a lost scroll position or selection is noticed. */
export function unsettle(): void {
  scrollTo(0, 120);
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  while (walker.nextNode()) {
    const text = walker.currentNode as Text;
    const isDrawn =
      text.parentElement?.checkVisibility() && !/^(SCRIPT|STYLE)$/.test(text.parentElement.tagName);
    if (!isDrawn || text.data.trim().length < 12) continue;
    getSelection()?.setBaseAndExtent(text, 2, text, 9);
    return;
  }
}

export function readState(): PageState {
  return {
    html: document.documentElement.outerHTML,
    scroll: scrollY,
    selection: getSelection()?.toString() ?? '',
  };
}

/**
 * Returns the time in milliseconds when the page has marks (or no longer has any), or null if that does not happen in
 * time.
 */
export async function whenMarked(given: { wanted: boolean; patience: number }): Promise<number | null> {
  const until = Date.now() + given.patience;
  while (CSS.highlights.size > 0 !== given.wanted) {
    if (Date.now() > until) return null;
    await new Promise(requestAnimationFrame);
  }
  return Date.now();
}

/** Records the longest task of the page's thread from now on (Chromium only). */
export function noteTasks(): void {
  const holder = globalThis as { sweptTasks?: number };
  holder.sweptTasks = 0;
  if (!PerformanceObserver.supportedEntryTypes.includes('longtask')) return;
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries())
      holder.sweptTasks = Math.max(holder.sweptTasks!, Math.round(duration));
  }).observe({ type: 'longtask' });
}

export function readTasks(): number | null {
  if (!PerformanceObserver.supportedEntryTypes.includes('longtask')) return null;
  return (globalThis as { sweptTasks?: number }).sweptTasks ?? 0;
}
