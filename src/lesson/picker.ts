/** Makes random choices that are the same each time for the same seed. */
export interface Picker {
  /** A whole number from 0 to below `limit`. */
  below(limit: number): number;
  /** A new list of the same items in another order. */
  shuffle<T>(items: readonly T[]): T[];
  /** Up to `count` different items, in the order they were picked. */
  pick<T>(items: readonly T[], count: number): T[];
  /**
   * Up to `count` different items, in the order of the list. Earlier items are likelier: mostly the commonest words,
   * and now and then a rare one.
   */
  pickEarly<T>(items: readonly T[], count: number): T[];
  /** Up to `count` different items, in the order of the list. Heavier items are likelier. */
  pickWeighted<T>(items: readonly T[], weight: (item: T, place: number) => number, count: number): T[];
}

/** A picker for one part of a sheet: `createPicker(4711, 'dictation')`. */
export function createPicker(seed: number, name = ''): Picker {
  const next = mulberry32(hash(`${seed} ${name}`));
  const below = (limit: number): number => Math.floor(next() * limit);
  const shuffle = <T>(items: readonly T[]): T[] => {
    const mixed = [...items];
    for (let i = mixed.length - 1; i > 0; i--) {
      const j = below(i + 1);
      [mixed[i], mixed[j]] = [mixed[j]!, mixed[i]!];
    }
    return mixed;
  };
  const pickWeighted: Picker['pickWeighted'] = (items, weight, count) => {
    // Efraimidis and Spirakis 2006: weighted sampling without replacement, by keys u^(1/weight).
    const keyed = items.map((item, i) => ({ item, i, key: next() ** (1 / weight(item, i)) }));
    return keyed
      .sort((a, b) => b.key - a.key)
      .slice(0, count)
      .sort((a, b) => a.i - b.i)
      .map(({ item }) => item);
  };
  return {
    below,
    shuffle,
    pickWeighted,
    pick: (items, count) => shuffle(items).slice(0, count),
    pickEarly: (items, count) => pickWeighted(items, (_, i) => 1 / (1 + i / (2 * count)), count),
  };
}

/** T. Ettinger's mulberry32, in the public domain: 32 bits of state are plenty for a sheet. */
function mulberry32(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** FNV-1a. */
function hash(text: string): number {
  let sum = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) sum = Math.imul(sum ^ text.charCodeAt(i), 0x01000193);
  return sum >>> 0;
}
