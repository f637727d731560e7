import { useEffect, useState } from 'preact/hooks';
import { loadSequences, type Sequences, watchSequences } from '../host/sequences-store.ts';

/** The stored sequences, kept up to date; null until they are read. */
export function useSequences(): Sequences | null {
  const [sequences, setSequences] = useState<Sequences | null>(null);
  useEffect(() => {
    const controller = new AbortController();
    watchSequences(setSequences, controller.signal);
    void loadSequences().then((loaded) => setSequences((known) => known ?? loaded));
    return () => controller.abort();
  }, []);
  return sequences;
}
