import { useEffect, useState } from 'preact/hooks';

/**
 * Returns a stored value and updates it when other windows change it. Returns null until the value is read. Both
 * functions must be the same at every call.
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
