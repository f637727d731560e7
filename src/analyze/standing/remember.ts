/**
 * The same function, which finds each value once. It forgets all of them where it would remember more than `most`. `find` never gives
 * undefined.
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
