import { useAddress, writeAddress } from '../../ui/address.ts';

/** The view that the address names. */
export type Route =
  | { readonly view: 'texts' | 'groups' | 'add' | 'file' }
  | { readonly view: 'text'; readonly id: string };

/** Returns the address of a view within the page. */
export function addressOf(route: Route): string {
  return route.view === 'text' ? writeAddress('text', route.id) : writeAddress(route.view);
}

/** Returns the route in the address of the page, and follows its changes. */
export function useRoute(): Route {
  return useAddress(readRoute);
}

function readRoute([view, id = '']: readonly string[]): Route {
  if (view === 'text' && /^[\w-]+$/.test(id)) return { view, id };
  return view === 'groups' || view === 'add' || view === 'file' ? { view } : { view: 'texts' };
}
