import { useAddress, writeAddress } from '../../ui/address.ts';

/** The view that the address names after the #. */
export type Route =
  | { readonly view: 'group'; readonly id: string | null }
  | { readonly view: 'sequence'; readonly id: string }
  | { readonly view: 'paste' | 'share' };

/** Returns the address of a view, for links. */
export function addressOf(route: Route): string {
  return 'id' in route ? writeAddress(route.view, route.id ?? '') : writeAddress(route.view);
}

/**
 * Returns the view that the address names, or a group if the address names none. Each change of view adds an entry to
 * the browser’s history.
 */
export function useRoute(): Route {
  return useAddress(readRoute);
}

/** Opens another view. */
export function go(route: Route): void {
  location.hash = addressOf(route);
}

function readRoute([view, id = '']: readonly string[]): Route {
  if (view === 'paste' || view === 'share') return { view };
  if (view === 'sequence' && id !== '') return { view, id };
  return { view: 'group', id: id || null };
}
