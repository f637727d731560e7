/** What a piece of work gives, and the processor's seconds it takes on all threads together: not the clock's, so that other programs do not count. */
export async function processorTime<T>(
  work: () => T | Promise<T>,
): Promise<{ readonly result: T; readonly seconds: number }> {
  const start = process.cpuUsage();
  const result = await work();
  const { user, system } = process.cpuUsage(start);
  return { result, seconds: (user + system) / 1e6 };
}
