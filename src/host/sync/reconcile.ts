/** A copied item: its text (null once deleted) and the time of its last change, in milliseconds. */
export interface Copy {
  readonly changed: number;
  readonly text: string | null;
}

type Items<T> = Readonly<Record<string, T>>;

/** The changes after which this browser and the account hold the same items. */
export interface Reconciled {
  /** The texts to put in this browser under these keys. Null means that the item is to be deleted in this browser. */
  readonly toHere: Items<string | null>;
  /** The copies to put in the account. */
  readonly toThere: Items<Copy>;
  /**
   * Texts of this browser whose items changed in both places. These texts need new keys, since the account's texts take
   * the old keys.
   */
  readonly beside: Items<string>;
  /** The items that both places hold afterwards. The next comparison uses them to tell which place changed an item. */
  readonly known: Items<Copy>;
}

/**
 * Compares the items of this browser and of the account with the items that both held the last time. Nothing that was
 * written is lost:
 * - An item that changed in one place is copied to the other place.
 * - An item that changed in both places is kept in both versions.
 * - An item that changed in one place and was deleted in the other is kept.
 */
export function reconcile(
  here: Items<string>,
  there: Items<Copy>,
  known: Items<Copy>,
  now: number,
): Reconciled {
  const toHere = new Map<string, string | null>();
  const toThere = new Map<string, Copy>();
  const beside = new Map<string, string>();
  const after = new Map<string, Copy>();
  for (const key of new Set([here, there, known].flatMap(Object.keys))) {
    const ours = ownOf(here, key) ?? null;
    const theirs = ownOf(there, key);
    const before = ownOf(known, key);
    const changedHere = ours !== (before?.text ?? null);
    const news = changedThere(theirs, before) ? theirs : null;
    if (news?.text === ours) {
      after.set(key, news);
    } else if (news && (!changedHere || news.text !== null)) {
      if (changedHere && ours !== null) beside.set(key, ours);
      toHere.set(key, news.text);
      after.set(key, news);
    } else if (changedHere) {
      const copy = { changed: Math.max(now, (theirs?.changed ?? 0) + 1), text: ours };
      toThere.set(key, copy);
      after.set(key, copy);
    } else if (before) {
      after.set(key, before);
    }
  }
  return {
    toHere: Object.fromEntries(toHere),
    toThere: Object.fromEntries(toThere),
    beside: Object.fromEntries(beside),
    known: Object.fromEntries(after),
  };
}

/** Returns the item stored under a key. Only own properties count, since an item may have a name that every object has. */
function ownOf<T>(items: Items<T>, key: string): T | undefined {
  return Object.hasOwn(items, key) ? items[key] : undefined;
}

function changedThere(theirs: Copy | undefined, before: Copy | undefined): theirs is Copy {
  if (theirs === undefined || theirs.changed <= (before?.changed ?? -1)) return false;
  return theirs.text !== (before?.text ?? null);
}
