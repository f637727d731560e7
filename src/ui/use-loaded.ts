import { useEffect, useState } from 'preact/hooks';

/** Something the package holds, loaded once for a page; null until it is there, `failed` when it cannot be read. */
export function useLoaded<T>(load: () => Promise<T>): T | 'failed' | null {
  const [loaded, setLoaded] = useState<T | 'failed' | null>(null);
  useEffect(() => {
    let current = true;
    load().then(
      (value) => current && setLoaded(() => value),
      () => current && setLoaded('failed'),
    );
    return () => {
      current = false;
    };
  }, [load]);
  return loaded;
}
