import { useEffect, useState } from 'preact/hooks';

/** An error while loading. Its message gives the reason. */
export class LoadFault extends Error {}

/**
 * Loads something from the package once for a page. Returns null until it is loaded, and a `LoadFault` if loading
 * fails.
 */
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
