import { type Groups, loadGroups, watchGroups } from '../../host/store/groups-store.ts';
import { useWatched } from '../../ui/use-watched.ts';

/** The stored groups, kept up to date; null until they are read. */
export function useGroups(): Groups | null {
  return useWatched(loadGroups, watchGroups);
}
