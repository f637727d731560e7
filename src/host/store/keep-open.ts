import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { loadOnce } from '../data/load-once.ts';

/**
 * Returns a function that returns the database. The first call opens the database, which then stays open. The database
 * closes when another window opens a newer version or clears everything. The next call opens the database again.
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
