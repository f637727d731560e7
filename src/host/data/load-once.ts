/** The same loader, which loads at its first call and gives the same afterwards; anew after a failure, or once it is told to forget. */
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
