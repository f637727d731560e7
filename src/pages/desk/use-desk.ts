import { useEffect, useState } from 'preact/hooks';
import { type Groups, loadGroups, watchGroups } from '../../host/store/groups-store.ts';
import { loadPassages, watchPassages } from '../../host/store/passages-store.ts';
import { loadSequences, type Sequences, watchSequences } from '../../host/store/sequences-store.ts';
import type { Passage } from '../../passage/kept/passage.ts';
import { readAddress, useAddress, writeAddress } from '../../ui/address.ts';

/** The content of the desk, and the passage named in the address. */
export interface Desk {
  readonly groups: Groups | null;
  readonly sequences: Sequences | null;
  readonly passages: readonly Passage[] | null;
  readonly opened: string | null;
  /** The tab whose text is to be taken to the desk. */
  readonly taking: { readonly tab: number; readonly swap: WantedSwap | null } | null;
  /** A swap to make in the opened passage, requested in the panel. */
  readonly swap: WantedSwap | null;
}

/** A word to replace everywhere. */
export interface WantedSwap {
  readonly word: string;
  readonly text: string;
}

const listeners = new Set<() => void>();

/** Tells this page's list of passages that a passage was saved on this page. */
export function noteSaved(): void {
  for (const listen of listeners) listen();
}

/** Shows a passage; null shows the view for putting a text on the desk. */
export function openPassage(id: string | null, swap: WantedSwap | null = null): void {
  // The history entry is replaced, so that going back does not take the text a second time.
  if (readAddressed(readAddress()).taking !== null) history.replaceState(null, '', '#new');
  location.hash = id === null ? '#new' : writeAddress('passage', id, ...(swap ? [swap.word, swap.text] : []));
}

/** Returns everything the desk shows, and keeps it up to date. */
export function useDesk(): Desk {
  const [groups, setGroups] = useState<Groups | null>(null);
  const [sequences, setSequences] = useState<Sequences | null>(null);
  const [passages, setPassages] = useState<readonly Passage[] | null>(null);
  const { opened, taking, swap } = useAddress(readAddressed);
  useEffect(() => {
    const controller = new AbortController();
    const { signal } = controller;
    const list = (): void => void loadPassages().then(setPassages);
    watchGroups(setGroups, signal);
    watchSequences(setSequences, signal);
    watchPassages(list, signal);
    listeners.add(list);
    signal.addEventListener('abort', () => listeners.delete(list), { once: true });
    void loadGroups().then((loaded) => setGroups((known) => known ?? loaded));
    void loadSequences().then((loaded) => setSequences((known) => known ?? loaded));
    list();
    return () => controller.abort();
  }, []);
  return { groups, sequences, passages, opened, taking, swap };
}

function readAddressed([view, id = '', word, text]: readonly string[]): Pick<
  Desk,
  'opened' | 'taking' | 'swap'
> {
  const swap = word && text ? { word, text } : null;
  return {
    opened: view === 'passage' && /^[\w-]+$/.test(id) ? id : null,
    taking: view === 'take' && /^\d+$/.test(id) ? { tab: Number(id), swap } : null,
    swap,
  };
}
