import { useEffect, useState } from 'preact/hooks';

/** What the page shows, as its address says. */
export type Route =
  | { readonly view: 'texts' | 'groups' | 'add' | 'file' }
  | { readonly view: 'text'; readonly id: string };

/** The address of a view within the page. */
export function addressOf(route: Route): string {
  return route.view === 'text' ? `#text/${route.id}` : `#${route.view}`;
}

/** Follows the address of the page. */
export function useRoute(): Route {
  const [route, setRoute] = useState(readRoute);
  useEffect(() => {
    const controller = new AbortController();
    addEventListener('hashchange', () => setRoute(readRoute()), { signal: controller.signal });
    return () => controller.abort();
  }, []);
  return route;
}

function readRoute(): Route {
  const [view, id = ''] = location.hash.slice(1).split('/');
  if (view === 'text' && /^[\w-]+$/.test(id)) return { view, id };
  return view === 'groups' || view === 'add' || view === 'file' ? { view } : { view: 'texts' };
}
