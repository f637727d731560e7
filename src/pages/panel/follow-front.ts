import type { PageReport, PageWords } from '../../contract/page-contract.ts';
import { askBackground, followWords } from '../../host/page-talk/client.ts';
import { describeFault } from '../../host/page-talk/describe-fault.ts';
import { checkAccess, findTab } from '../../host/page-talk/page-access.ts';
import { say } from '../../wording/say.ts';

export type PageState =
  | { readonly kind: 'loading' }
  /** `isPdf` marks a PDF that can still be opened as a file. */
  | { readonly kind: 'closed'; readonly why: string; readonly isPdf?: boolean }
  /** `allowed` is true if the button was pressed on this page before, so that the panel may shade the page too. */
  | { readonly kind: 'unshaded'; readonly allowed: boolean }
  /** The fault in a sentence, and the details for a person who fixes the fault. */
  | { readonly kind: 'failed'; readonly why: string; readonly details: string }
  | { readonly kind: 'shaded'; readonly tab: number; readonly page: PageWords; readonly report: PageReport };

type Tab = { readonly id: number; readonly url: string | undefined } | null;

/**
 * Follows the page in front until aborted. Returns a function that reads the page again. `onState` receives the state
 * of the page, more than once if frames answer later than the page itself. A page that does not answer does not block
 * other tabs.
 */
export function followFront(onState: (state: PageState) => void, signal: AbortSignal): () => void {
  let round: { readonly tab: number | null; again: boolean } | null = null;
  let asked = 0;
  /** The tab whose figures are shown. While its page is read again, the figures stay until all frames have answered. */
  let shown: number | null = null;

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
    if (shown !== id) shown = null;
    const now = { tab: id, again: true };
    round = now;
    while (now.again && round === now) {
      now.again = false;
      for await (const state of readPage(tab, shown !== null)) {
        if (round !== now || signal.aborted) return;
        onState(state);
        shown = state.kind === 'shaded' ? id : null;
      }
    }
    if (round === now) round = null;
  }
  return () => void look();
}

/** Yields the state of a page. With `wholeOnly`, the state comes only after the frames of the page have answered too. */
async function* readPage(tab: Tab, wholeOnly: boolean): AsyncGenerator<PageState> {
  try {
    if (!tab) return yield { kind: 'closed', why: say('panel.noTab') };
    const toShaded = async (page: PageWords): Promise<PageState> => ({
      kind: 'shaded',
      tab: tab.id,
      page,
      report: await askBackground('report', page),
    });
    let last: PageWords | null = null;
    for await (last of followWords(tab.id)) if (!wholeOnly && !isEmpty(last)) yield await toShaded(last);
    if (!last || isEmpty(last)) {
      // A PDF has no text for the content script. The module is imported only here, since it is seldom needed.
      const { readPdfInFront } = await import('./pdf-in-front.ts');
      const pdf = await readPdfInFront(tab.id);
      if (pdf && 'why' in pdf) return yield { kind: 'closed', why: pdf.why, isPdf: true };
      if (pdf) return yield await toShaded(pdf);
    }
    if (last) {
      if (wholeOnly || isEmpty(last)) yield await toShaded(last);
      return;
    }
    const access = await checkAccess(tab);
    if (access.allowed || access.why === null) yield { kind: 'unshaded', allowed: access.allowed };
    else yield { kind: 'closed', why: access.why, isPdf: access.why === say('host.pdf') };
  } catch (error) {
    yield { kind: 'failed', ...describeFault(error) };
  }
}

function isEmpty({ words }: PageWords): boolean {
  return words.length === 0;
}
