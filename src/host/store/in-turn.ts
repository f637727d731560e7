/**
 * Does one piece of work on a stored item after another, in all windows and the background together, so that what each reads is what the one
 * before has written. One that fails does not stop those behind it.
 */
export async function inTurn(item: string, work: () => Promise<void>): Promise<void> {
  await navigator.locks.request(`wordreach/${item}`, work);
}
