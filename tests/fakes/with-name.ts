/** Yields copies of a value, each with one text or one key replaced by a name. There is one copy for each place. */
export function* withName(value: unknown, name: string): Generator<unknown> {
  if (typeof value === 'string') yield name;
  if (Array.isArray(value))
    for (const [i, item] of value.entries())
      for (const changed of withName(item, name)) yield value.with(i, changed);
  else if (typeof value === 'object' && value !== null) {
    const entries = Object.entries(value);
    for (const [i, [key, item]] of entries.entries()) {
      yield Object.fromEntries(entries.with(i, [name, item]));
      for (const changed of withName(item, name)) yield Object.fromEntries(entries.with(i, [key, changed]));
    }
  }
}
