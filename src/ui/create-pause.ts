/** The longest time for which the page may be kept busy, in milliseconds: half a frame. */
const SLICE = 8;

/**
 * Creates a pause function for work in slices. `await pause()` between parts of the work lets the page respond to the
 * teacher whenever a slice is over.
 */
export function createPause(): () => Promise<void> | undefined {
  let start = performance.now();
  return () => {
    if (performance.now() - start < SLICE) return undefined;
    return nextTurn().then(() => {
      start = performance.now();
    });
  };
}

/** Resolves in the next turn, sooner than a timer if the browser supports it. */
export function nextTurn(): Promise<void> {
  const { scheduler } = globalThis as { scheduler?: { yield?: () => Promise<void> } };
  return scheduler?.yield?.() ?? new Promise((resolve) => setTimeout(resolve, 0));
}
