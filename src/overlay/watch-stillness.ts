/** Scrolling has ended when nothing scrolled for so long, in milliseconds. */
const AFTER_SCROLL = 200;
/** A page is still when nothing on it changed for so long, in milliseconds; each time it is found restless, twice as long. */
const STILL = 1000;
/** A page that has changed so often since it was still is restless. */
const RESTLESS = 30;

export interface Stillness {
  isScrolling(): boolean;
  /** Something on the page has changed. */
  noteChange(): void;
  /** There is more to do before the page counts as still. */
  wait(): void;
}

/**
 * Follows whether a page is still, and whether somebody scrolls it. `onRest` is called when scrolling has ended; `onStill` when the page has
 * been still for a while, and with false when a page that was still keeps changing.
 */
export function watchStillness(
  onRest: () => void,
  onStill: (isStill: boolean) => void,
  signal: AbortSignal,
): Stillness {
  let wanted = STILL;
  let changes = 0;
  let isStill = false;
  let rest: ReturnType<typeof setTimeout> | undefined;
  let still: ReturnType<typeof setTimeout> | undefined;
  const noteScroll = (): void => {
    clearTimeout(rest);
    rest = setTimeout(() => {
      rest = undefined;
      onRest();
    }, AFTER_SCROLL);
  };
  addEventListener('scroll', noteScroll, { capture: true, passive: true, signal });

  function wait(): void {
    if (isStill || signal.aborted) return;
    clearTimeout(still);
    still = setTimeout(() => {
      if (rest) {
        wait();
        return;
      }
      isStill = true;
      changes = 0;
      onStill(true);
    }, wanted);
  }
  signal.addEventListener('abort', () => {
    clearTimeout(rest);
    clearTimeout(still);
  });

  return {
    isScrolling: () => rest !== undefined,
    noteChange() {
      if (isStill && ++changes > RESTLESS) {
        isStill = false;
        wanted *= 2;
        onStill(false);
      }
      wait();
    },
    wait,
  };
}
