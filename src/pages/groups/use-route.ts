import { useEffect, useState } from 'preact/hooks';

/** What the page shows, as its address says behind the #. */
export type Route =
  | { readonly view: 'group'; readonly id: string | null }
  | { readonly view: 'sequence'; readonly id: string }
  | { readonly view: 'paste' | 'share' };

/** The address of a view, for links. */
export function addressOf(route: Route): string {
  return 'id' in route ? `#${route.view}/${encodeURIComponent(route.id ?? '')}` : `#${route.view}`;
}

/** The view the address names; a group when it names none. Leaves an entry in the browser's history at each change. */
export function useRoute(): Route {
  const [route, setRoute] = useState(readRoute);
  useEffect(() => {
    const listen = (): void => setRoute(readRoute());
    addEventListener('hashchange', listen);
    return () => removeEventListener('hashchange', listen);
  }, []);
  return route;
}

/** Shows another view. */
export function go(route: Route): void {
  location.hash = addressOf(route);
}

function readRoute(): Route {
  const [view, id = ''] = location.hash.slice(1).split('/');
  if (view === 'paste' || view === 'share') return { view };
  const named = decode(id);
  if (view === 'sequence' && named !== null) return { view, id: named };
  return { view: 'group', id: named };
}

function decode(part: string): string | null {
  try {
    return decodeURIComponent(part) || null;
  } catch {
    return null;
  }
}
