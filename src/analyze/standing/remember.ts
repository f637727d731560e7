/**
 * Returns the same function with a cache, so each value is computed only once. The cache is emptied when it would hold
 * more than `most` values. `find` never returns undefined.
 */
export function remember<K, V>(find: (key: K) => V, most = Number.POSITIVE_INFINITY): (key: K) => V {
  const known = new Map<K, V>();
  return (key) => {
    const before = known.get(key);
    if (before !== undefined) return before;
    const found = find(key);
    if (known.size >= most) known.clear();
    known.set(key, found);
    return found;
  };
}

/**
 * Returns the same function with a cache. The cache holds one value for each object that `keyOf` returns, and drops the
 * value together with the object. `find` never returns undefined.
 */
export function rememberFor<Given extends object, V>(
  find: (given: Given) => V,
  keyOf: (given: Given) => object = (given) => given,
): (given: Given) => V {
  const known = new WeakMap<object, V>();
  return (given) => {
    const key = keyOf(given);
    const before = known.get(key);
    if (before !== undefined) return before;
    const found = find(given);
    known.set(key, found);
    return found;
  };
}
