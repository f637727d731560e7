import type { Report } from '../analyze/types.ts';
import { askBackground, followWords } from '../host/client.ts';
import { describeFault } from '../host/describe-fault.ts';
import type { PageWords } from '../host/messages.ts';
import { checkAccess, findTab } from '../host/page-access.ts';
import { say } from '../wording/say.ts';

export type PageState =
  | { readonly kind: 'loading' }
  | { readonly kind: 'closed'; readonly why: string }
  /** `allowed` when the button was pressed here before, so that the panel may shade it too. */
  | { readonly kind: 'unshaded'; readonly allowed: boolean }
  /** What happened, and what a person who mends it needs to know. */
  | { readonly kind: 'failed'; readonly why: string; readonly details: string }
  | { readonly kind: 'shaded'; readonly tab: number; readonly page: PageWords; readonly report: Report };

type Tab = { readonly id: number; readonly url: string | undefined } | null;

/**
 * Follows the page in front: each call of what this gives looks at it anew, and `onState` is told what it is, more than once where
 * frames answer later than the page itself. A page that does not answer keeps nobody from another tab. Until aborted.
 */
export function followFront(onState: (state: PageState) => void, signal: AbortSignal): () => void {
  let round: { readonly tab: number | null; again: boolean } | null = null;
  let asked = 0;

  async function look(): Promise<void> {
    const mine = ++asked;
    const tab = await findTab().catch(() => null);
    if (mine !== asked || signal.aborted) return;
    const id = tab?.id ?? null;
    if (round?.tab === id) {
      round.again = true;
      return;
    }
    if (round) onState({ kind: 'loading' });
    const now = { tab: id, again: true };
    round = now;
    while (now.again && round === now) {
      now.again = false;
      for await (const state of readPage(tab)) {
        if (round !== now || signal.aborted) return;
        onState(state);
      }
    }
    if (round === now) round = null;
  }
  return () => void look();
}

async function* readPage(tab: Tab): AsyncGenerator<PageState> {
  try {
    if (!tab) return yield { kind: 'closed', why: say('panel.noTab') };
    let isShaded = false;
    for await (const page of followWords(tab.id)) {
      isShaded = true;
      yield { kind: 'shaded', tab: tab.id, page, report: await askBackground('report', page) };
    }
    if (isShaded) return;
    const access = await checkAccess(tab);
    if (access.allowed || access.why === null) yield { kind: 'unshaded', allowed: access.allowed };
    else yield { kind: 'closed', why: access.why };
  } catch (error) {
    yield { kind: 'failed', ...describeFault(error) };
  }
}
