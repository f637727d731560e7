/**
 * Collects unhandled errors in place of the test runner. The returned function stops the collection and returns the
 * errors.
 */
export function listenForFaults(): () => Promise<Error[]> {
  const faults: Error[] = [];
  const others = process.listeners('unhandledRejection');
  process.removeAllListeners('unhandledRejection');
  process.on('unhandledRejection', (fault) => faults.push(fault as Error));
  return async () => {
    await new Promise(setImmediate);
    process.removeAllListeners('unhandledRejection');
    for (const other of others) process.on('unhandledRejection', other);
    return faults;
  };
}
