import { useEffect, useState } from 'preact/hooks';
import { type Groups, loadGroups, watchGroups } from '../host/groups-store.ts';
import { loadPassages, type Passage, watchPassages } from '../host/passages-store.ts';
import { loadSequences, type Sequences, watchSequences } from '../host/sequences-store.ts';

/** What lies on the desk, and the passage the address names. */
export interface Desk {
  readonly groups: Groups | null;
  readonly sequences: Sequences | null;
  readonly passages: readonly Passage[] | null;
  readonly opened: string | null;
  /** The tab whose text is to be taken to the desk. */
  readonly taking: number | null;
}

const listeners = new Set<() => void>();

/** Tells this page's list of passages that one was saved here. */
export function noteSaved(): void {
  for (const listen of listeners) listen();
}

/** Shows a passage; null shows how to put one on the desk. */
export function openPassage(id: string | null): void {
  // A text is taken once: going back does not take it again.
  if (readAddress().taking !== null) history.replaceState(null, '', '#new');
  location.hash = id === null ? '#new' : `#passage/${id}`;
}

/** Everything the desk shows, kept up to date. */
export function useDesk(): Desk {
  const [groups, setGroups] = useState<Groups | null>(null);
  const [sequences, setSequences] = useState<Sequences | null>(null);
  const [passages, setPassages] = useState<readonly Passage[] | null>(null);
  const [{ opened, taking }, setOpened] = useState(readAddress);
  useEffect(() => {
    const controller = new AbortController();
    const { signal } = controller;
    const list = (): void => void loadPassages().then(setPassages);
    watchGroups(setGroups, signal);
    watchSequences(setSequences, signal);
    watchPassages(list, signal);
    listeners.add(list);
    signal.addEventListener('abort', () => listeners.delete(list), { once: true });
    addEventListener('hashchange', () => setOpened(readAddress()), { signal });
    void loadGroups().then((loaded) => setGroups((known) => known ?? loaded));
    void loadSequences().then((loaded) => setSequences((known) => known ?? loaded));
    list();
    return () => controller.abort();
  }, []);
  return { groups, sequences, passages, opened, taking };
}

function readAddress(): Pick<Desk, 'opened' | 'taking'> {
  const tab = /^#take\/(\d+)$/.exec(location.hash)?.[1];
  return {
    opened: /^#passage\/([\w-]+)$/.exec(location.hash)?.[1] ?? null,
    taking: tab === undefined ? null : Number(tab),
  };
}
