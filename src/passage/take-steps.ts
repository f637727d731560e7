/** Work that is done a step at a time and ends with a result. */
export type Steps<T> = Iterator<undefined, T>;

/** The longest stretch of work before the page gets a turn, in milliseconds. */
const SLICE = 10;

/** Takes all steps at once. */
export function takeSteps<T>(steps: Steps<T>): T {
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}

/** Takes steps for a few milliseconds. Returns the result, or null if steps are left. */
export function takeSlice<T extends object>(steps: Steps<T>): T | null {
  const until = performance.now() + SLICE;
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
    if (performance.now() >= until) return null;
  }
}

/** Takes all steps in tasks of a few milliseconds. The first one comes after a turn of the page. Returns null when aborted. */
export async function takeStepsInSlices<T extends object>(
  steps: Steps<T>,
  signal: AbortSignal,
): Promise<T | null> {
  for (;;) {
    await new Promise((turn) => setTimeout(turn));
    if (signal.aborted) return null;
    const made = takeSlice(steps);
    if (made !== null) return made;
  }
}
