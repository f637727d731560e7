/** The exit code of a program ended by Ctrl-C, as shells have it: 128 and the number of the signal. */
const INTERRUPTED = 130;

/**
 * A signal that the first Ctrl-C gives; a second one ends the process at once. `end` says, after a stop, how much was done,
 * and lets go of the keys.
 */
export function stopOnInterrupt(): { readonly signal: AbortSignal; end(done: string): void } {
  const stop = new AbortController();
  const interrupt = (): void => stop.abort();
  process.once('SIGINT', interrupt);
  return {
    signal: stop.signal,
    end(done) {
      process.removeListener('SIGINT', interrupt);
      if (!stop.signal.aborted) return;
      process.stderr.write(`Stopped after ${done}.\n`);
      process.exitCode = INTERRUPTED;
    },
  };
}
