/**
 * The result of a piece of work, and the processor's seconds that it takes on all threads together. Other programs do not count, as they would
 * by the clock.
 */
export async function processorTime<T>(
  work: () => T | Promise<T>,
): Promise<{ readonly result: T; readonly seconds: number }> {
  const start = process.cpuUsage();
  const result = await work();
  const { user, system } = process.cpuUsage(start);
  return { result, seconds: (user + system) / 1e6 };
}
