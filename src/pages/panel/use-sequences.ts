import { loadSequences, type Sequences, watchSequences } from '../../host/store/sequences-store.ts';
import { useWatched } from '../../ui/use-watched.ts';

/** The stored sequences, kept up to date; null until they are read. */
export function useSequences(): Sequences | null {
  return useWatched(loadSequences, watchSequences);
}
