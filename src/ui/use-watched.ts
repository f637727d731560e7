import { useEffect, useState } from 'preact/hooks';

/**
 * Something stored that other windows change too, kept up to date; null until it is read. Both functions are to be the
 * same at every call.
 */
export function useWatched<T>(
  load: () => Promise<T>,
  watch: (onChange: (value: T) => void, signal: AbortSignal) => void,
): T | null {
  const [value, setValue] = useState<T | null>(null);
  useEffect(() => {
    const controller = new AbortController();
    watch(setValue, controller.signal);
    void load().then((loaded) => setValue((known) => known ?? loaded));
    return () => controller.abort();
  }, [load, watch]);
  return value;
}
