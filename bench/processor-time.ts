/**
 * Returns the result of a piece of work, and the processor time in seconds that the work takes on all threads together.
 * Unlike clock time, processor time does not include other programs.
 */
export async function processorTime<T>(
  work: () => T | Promise<T>,
): Promise<{ readonly result: T; readonly seconds: number }> {
  const start = process.cpuUsage();
  const result = await work();
  const { user, system } = process.cpuUsage(start);
  return { result, seconds: (user + system) / 1e6 };
}
