import { useAddress, writeAddress } from '../../ui/address.ts';

/** The view that the address names behind the #. */
export type Route =
  | { readonly view: 'group'; readonly id: string | null }
  | { readonly view: 'sequence'; readonly id: string }
  | { readonly view: 'paste' | 'share' };

/** The address of a view, for links. */
export function addressOf(route: Route): string {
  return 'id' in route ? writeAddress(route.view, route.id ?? '') : writeAddress(route.view);
}

/** The view the address names; a group when it names none. Leaves an entry in the browser's history at each change. */
export function useRoute(): Route {
  return useAddress(readRoute);
}

/** Shows another view. */
export function go(route: Route): void {
  location.hash = addressOf(route);
}

function readRoute([view, id = '']: readonly string[]): Route {
  if (view === 'paste' || view === 'share') return { view };
  if (view === 'sequence' && id !== '') return { view, id };
  return { view: 'group', id: id || null };
}
