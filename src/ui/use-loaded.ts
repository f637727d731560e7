import { useEffect, useState } from 'preact/hooks';

/** An error of loading; its message says why. */
export class LoadFault extends Error {}

/** Something the package holds, loaded once for a page; null until it is there, a `LoadFault` when it cannot be had. */
export function useLoaded<T>(load: () => Promise<T>): T | LoadFault | null {
  const [loaded, setLoaded] = useState<T | LoadFault | null>(null);
  useEffect(() => {
    let current = true;
    load().then(
      (value) => current && setLoaded(() => value),
      (error: unknown) => {
        const why = error instanceof Error ? error.message : String(error);
        if (current) setLoaded(new LoadFault(why, { cause: error }));
      },
    );
    return () => {
      current = false;
    };
  }, [load]);
  return loaded;
}
