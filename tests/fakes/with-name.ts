/** A value with one of its texts, or one of its keys, replaced by a name: one for each place. */
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
