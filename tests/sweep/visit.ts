/** The record of one page while the button of the built extension was pressed on it, the panel read, and the button pressed again. */
export interface Visit {
  /** Milliseconds from the press to the first marks; null where none came. */
  readonly marks: number | null;
  /** Milliseconds from the press to the panel's figure; null where none came. */
  readonly figure: number | null;
  /** The panel's figure (`80.3%`), or what it said in place of one. */
  readonly says: string;
  /** The words that were read, by the text that was checked, with their counts. */
  readonly words: readonly (readonly [word: string, count: number])[];
  readonly scope: string;
  /** The longest task of the page's thread in milliseconds; null where the browser does not tell. */
  readonly longestTask: number | null;
  /** Uncaught errors of page, background and panel. */
  readonly errors: readonly string[];
  /** What the page looked like: before the press, while it was shaded, and after the second press. */
  readonly states: readonly PageState[];
}

/** What must not change by our doing. */
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

/** How long marks and figure are waited for, in milliseconds. */
export const PATIENCE = 10_000;

/** The functions below run in the page that is visited. */

/** Scrolls a little and selects a few words, so that it shows when either is lost. */
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

/** The clock's milliseconds when there are marks (or none any more); null when that does not come. */
export async function whenMarked(given: { wanted: boolean; patience: number }): Promise<number | null> {
  const until = Date.now() + given.patience;
  while (CSS.highlights.size > 0 !== given.wanted) {
    if (Date.now() > until) return null;
    await new Promise(requestAnimationFrame);
  }
  return Date.now();
}

/** Notes tasks of the page's thread from now on (Chromium alone). */
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
