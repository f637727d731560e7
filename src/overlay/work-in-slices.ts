/** The longest stretch of work before the page can run, in milliseconds. */
const SLICE = 8;

/** Lets the page draw and handle input, then continues. Continues sooner than a timer if the browser supports it. */
export function nextTurn(): Promise<void> {
  const scheduler = (globalThis as { scheduler?: { yield?: () => Promise<void> } }).scheduler;
  if (scheduler?.yield) return scheduler.yield();
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(null);
  });
}

/** The time after which a frame is no longer waited for, in milliseconds. A page in the background draws none. */
const LATE = 100;

/** Waits until the page has drawn its next frame. */
export function whenDrawn(): Promise<void> {
  return new Promise((resolve) => {
    const late = setTimeout(resolve, LATE);
    requestAnimationFrame(() => {
      clearTimeout(late);
      setTimeout(resolve);
    });
  });
}

/**
 * Calls `work` for each item and yields to the page every few milliseconds. `turn` is the function that yields; a
 * slower one may be given. Stops without an error when aborted.
 */
export async function workInSlices<T>(
  items: Iterable<T>,
  work: (item: T) => void,
  signal?: AbortSignal,
  turn: () => Promise<unknown> = nextTurn,
): Promise<void> {
  let until = performance.now() + SLICE;
  for (const item of items) {
    if (signal?.aborted) return;
    work(item);
    if (performance.now() >= until) {
      await turn();
      until = performance.now() + SLICE;
    }
  }
}
