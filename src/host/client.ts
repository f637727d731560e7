import { browser } from './browser.ts';
import type { Answer, Given, Question, ToBackground, ToPage } from './messages.ts';

/** Asks the background; it is woken when it sleeps. Rejects when the extension was updated meanwhile. */
export async function askBackground<N extends keyof ToBackground>(
  ask: N,
  given: Given<ToBackground, N>,
): Promise<Answer<ToBackground, N>> {
  const question: Question = { to: 'background', ask, given };
  return (await browser.runtime.sendMessage(question)) as Answer<ToBackground, N>;
}

/** Asks the shaded page in a tab; null when nothing in it answers. */
export async function askPage<N extends keyof ToPage>(
  tab: number,
  ask: N,
  given: Given<ToPage, N>,
): Promise<Answer<ToPage, N> | null> {
  const question: Question = { to: 'page', ask, given };
  try {
    return ((await browser.tabs.sendMessage(tab, question, { frameId: 0 })) ?? null) as Answer<
      ToPage,
      N
    > | null;
  } catch {
    return null;
  }
}
