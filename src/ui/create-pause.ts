/** How long the page may be kept busy at a time, in milliseconds: half a frame. */
const SLICE = 8;

/** Work in slices: `await pause()` between its parts lets the page answer to the teacher whenever a slice is over. */
export function createPause(): () => Promise<void> | undefined {
  let start = performance.now();
  return () => {
    if (performance.now() - start < SLICE) return undefined;
    return nextTurn().then(() => {
      start = performance.now();
    });
  };
}

/** Sooner than a timer where the browser can. */
export function nextTurn(): Promise<void> {
  const { scheduler } = globalThis as { scheduler?: { yield?: () => Promise<void> } };
  return scheduler?.yield?.() ?? new Promise((resolve) => setTimeout(resolve, 0));
}
