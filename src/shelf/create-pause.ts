/** How long the page may be kept busy at a time, in milliseconds: half a frame. */
const SLICE = 8;

/** Work in slices: `await pause()` between its parts lets the page answer to the teacher whenever a slice is over. */
export function createPause(): () => Promise<void> | undefined {
  let start = performance.now();
  return () => {
    if (performance.now() - start < SLICE) return undefined;
    return new Promise<void>((resolve) => setTimeout(resolve, 0)).then(() => {
      start = performance.now();
    });
  };
}
