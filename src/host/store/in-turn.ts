/**
 * Runs the tasks on a stored item one after another, across all windows and the background. Each task therefore reads
 * the values that the task before it wrote. A task that fails does not stop later tasks.
 */
export async function inTurn(item: string, work: () => Promise<void>): Promise<void> {
  await navigator.locks.request(`wordreach/${item}`, work);
}
