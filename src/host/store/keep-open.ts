import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { loadOnce } from '../data/load-once.ts';

/**
 * Gives a database, opened with the first call and kept open. It gives way to a newer version in another window, and to one
 * that clears everything; the next call opens it again.
 */
export function keepOpen<S extends DBSchema>(
  name: string,
  version: number,
  upgrade: (db: IDBPDatabase<S>) => void,
): () => Promise<IDBPDatabase<S>> {
  const open = loadOnce(() =>
    openDB<S>(name, version, {
      upgrade,
      blocking: (_current, _wanted, event) => {
        open.forget();
        (event.target as IDBDatabase).close();
      },
      terminated: () => open.forget(),
    }),
  );
  return open;
}
