/** Longest stretch of work before the page gets its turn, in milliseconds. */
const SLICE = 8;

/** Lets the page draw and answer input, then goes on; sooner than a timer where the browser can. */
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

/**
 * Does `work` for each item, giving way to the page every few milliseconds, by `turn` where it may take longer; stops quietly when aborted.
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
