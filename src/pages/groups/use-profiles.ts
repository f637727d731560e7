import { useEffect, useState } from 'preact/hooks';
import { type Groups, loadGroups, watchGroups } from '../../host/store/groups-store.ts';
import { loadSequences, type Sequences, watchSequences } from '../../host/store/sequences-store.ts';

/** Everything the teacher has set, as it is stored. */
export interface Profiles {
  readonly groups: Groups;
  readonly sequences: Sequences;
}

/** Returns the stored groups and sequences, kept up to date. Null until both have been read. */
export function useProfiles(): Profiles | null {
  const [groups, setGroups] = useState<Groups | null>(null);
  const [sequences, setSequences] = useState<Sequences | null>(null);
  useEffect(() => {
    const controller = new AbortController();
    watchGroups(setGroups, controller.signal);
    watchSequences(setSequences, controller.signal);
    void loadGroups().then((loaded) => setGroups((known) => known ?? loaded));
    void loadSequences().then((loaded) => setSequences((known) => known ?? loaded));
    return () => controller.abort();
  }, []);
  return groups && sequences ? { groups, sequences } : null;
}
