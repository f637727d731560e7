import { useEffect, useState } from 'preact/hooks';
import { type Groups, loadGroups, watchGroups } from '../host/groups-store.ts';

/** The stored groups, kept up to date; null until they are read. */
export function useGroups(): Groups | null {
  const [groups, setGroups] = useState<Groups | null>(null);
  useEffect(() => {
    const controller = new AbortController();
    watchGroups(setGroups, controller.signal);
    void loadGroups().then((loaded) => setGroups((known) => known ?? loaded));
    return () => controller.abort();
  }, []);
  return groups;
}
