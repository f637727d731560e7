import { useCallback, useEffect, useState } from 'preact/hooks';
import { findTab, shadePage, watchPageNews, watchTabs } from '../../host/page-talk/page-access.ts';
import { watchGroups } from '../../host/store/groups-store.ts';
import { followFront, type PageState } from './follow-front.ts';

/** Returns the words and figures of the page in front. Asks again when the page, the tab or the group changes. */
export function usePage(): { state: PageState; shade: () => void; retry: () => void } {
  const [state, setState] = useState<PageState>({ kind: 'loading' });
  const [look, setLook] = useState<() => void>(() => () => undefined);

  useEffect(() => {
    const controller = new AbortController();
    const ask = followFront(setState, controller.signal);
    setLook(() => ask);
    watchTabs(ask, controller.signal);
    watchPageNews(ask, controller.signal);
    watchGroups(ask, controller.signal);
    ask();
    return () => controller.abort();
  }, []);

  const shade = useCallback(() => {
    findTab()
      .then((tab) => (tab ? shadePage(tab.id) : undefined))
      .catch(look);
  }, [look]);
  return { state, shade, retry: look };
}
