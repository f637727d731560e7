/** Takes the errors that nobody takes care of from the test's runner, until they are asked for. */
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
