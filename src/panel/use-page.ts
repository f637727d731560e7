import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import type { Report } from '../analyze/types.ts';
import { askBackground, askWords } from '../host/client.ts';
import { watchGroups } from '../host/groups-store.ts';
import type { PageWords } from '../host/messages.ts';
import { checkAccess, findTab, shadePage, watchPageNews, watchTabs } from '../host/page-access.ts';
import { say } from '../wording/say.ts';

export type PageState =
  | { readonly kind: 'loading' }
  | { readonly kind: 'closed'; readonly why: string }
  /** `allowed` when the button was pressed here before, so that the panel may shade it too. */
  | { readonly kind: 'unshaded'; readonly allowed: boolean }
  | { readonly kind: 'shaded'; readonly tab: number; readonly page: PageWords; readonly report: Report };

/** What is known of the page in front; asked again when the page, the tab or the group changes. */
export function usePage(): { state: PageState; shade: () => void } {
  const [state, setState] = useState<PageState>({ kind: 'loading' });
  const busy = useRef<{ again: boolean } | null>(null);

  const refresh = useCallback(async () => {
    if (busy.current) {
      busy.current.again = true;
      return;
    }
    const round = { again: true };
    busy.current = round;
    while (round.again) {
      round.again = false;
      setState(await readPage());
    }
    busy.current = null;
  }, []);

  useEffect(() => {
    const controller = new AbortController();
    const ask = (): void => void refresh();
    watchTabs(ask, controller.signal);
    watchPageNews(ask, controller.signal);
    watchGroups(ask, controller.signal);
    ask();
    return () => controller.abort();
  }, [refresh]);

  const shade = useCallback(() => {
    findTab()
      .then((tab) => (tab ? shadePage(tab.id) : undefined))
      .catch(refresh);
  }, [refresh]);
  return { state, shade };
}

async function readPage(): Promise<PageState> {
  try {
    const tab = await findTab();
    if (!tab) return { kind: 'closed', why: say('panel.noTab') };
    const page = await askWords(tab.id);
    if (page) return { kind: 'shaded', tab: tab.id, page, report: await askBackground('report', page) };
    const access = await checkAccess(tab);
    if (access.allowed || access.why === null) return { kind: 'unshaded', allowed: access.allowed };
    return { kind: 'closed', why: access.why };
  } catch {
    return { kind: 'closed', why: say('panel.tableFailed') };
  }
}
