/**
 * Does one piece of work after another, so that what each reads is what the one before has written. One that fails
 * does not stop those behind it; it is told by a promise of its own, so that a fault nobody waits for is not passed over.
 */
export function createTurns(): (work: () => Promise<void>) => Promise<void> {
  let last: Promise<void> = Promise.resolve();
  return async (work) => {
    const done = last.then(work);
    last = done.catch(() => undefined);
    await done;
  };
}
