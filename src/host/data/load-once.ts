/**
 * Returns a loader that loads at its first call and then returns the same result. It loads again after a failure, or
 * after `forget` is called.
 */
export function loadOnce<T>(load: () => Promise<T>): (() => Promise<T>) & { forget(): void } {
  let loaded: Promise<T> | undefined;
  const once = (): Promise<T> => {
    if (loaded) return loaded;
    const loading = load();
    loaded = loading;
    loading.catch(() => {
      if (loaded === loading) loaded = undefined;
    });
    return loading;
  };
  return Object.assign(once, {
    forget() {
      loaded = undefined;
    },
  });
}
