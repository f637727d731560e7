/** The time in milliseconds without scrolling after which scrolling counts as ended. */
const AFTER_SCROLL = 200;
/**
 * The time in milliseconds without changes after which a page counts as still. The time is doubled whenever the page
 * turns out to be restless.
 */
const STILL = 1000;
/** The number of changes since the page was still from which it counts as restless. */
const RESTLESS = 30;

export interface Stillness {
  isScrolling(): boolean;
  /** Notes that something on the page has changed. */
  noteChange(): void;
  /** Notes that there is more to do before the page counts as still. */
  wait(): void;
}

/**
 * Tracks whether a page is still and whether it is being scrolled. `onRest` is called when scrolling has ended.
 * `onStill` is called when the page has been still for a while, and with false when a still page keeps changing.
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
