/**
 * Calls `attempt` again until it no longer rejects, and returns its result. Rejects with its last error after `timeout`
 * milliseconds.
 */
export async function waitFor<T>(
  attempt: () => T | Promise<T>,
  { timeout, interval = 50 }: { readonly timeout: number; readonly interval?: number },
): Promise<T> {
  const until = Date.now() + timeout;
  for (;;) {
    try {
      return await attempt();
    } catch (error) {
      if (Date.now() > until) throw error;
    }
    await new Promise((resolve) => setTimeout(resolve, interval));
  }
}
