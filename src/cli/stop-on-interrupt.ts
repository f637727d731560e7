/** The exit code of a program ended by Ctrl-C, as in shells: 128 plus the number of the signal. */
const INTERRUPTED = 130;

/**
 * Returns a signal that the first Ctrl-C aborts. A second Ctrl-C ends the process at once. `end` reports, after a stop,
 * how much was done, and removes the Ctrl-C handler.
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
