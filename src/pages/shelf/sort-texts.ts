import type { Fit } from '../../analyze/index.ts';
import type { IndexedText } from './shelf-index.ts';

/** A text with its fit for the chosen group. */
export interface RankedText {
  readonly text: IndexedText;
  readonly fit: Fit;
}

/**
 * The order of the texts:
 * - `fit`: texts that are ready now come first, and among them the texts that practise the group's step. Then come the
 * other texts by how soon they are ready.
 * - `practice`: texts with the most words opened by the group's step come first.
 */
export type Order = 'fit' | 'practice' | 'newest' | 'title';

/** When a group can read a text: now, within the next few steps (`soon`), or later or never (`later`). */
export type Band = 'now' | 'soon' | 'later';

/** The number of steps ahead that count as `soon`. */
export const SOON = 5;

/** The teacher's search on the shelf. */
export interface Wanted {
  /** Words that must all occur in title, tags, notes, address or author. */
  readonly search: string;
  /** Null if texts with any tags are wanted. */
  readonly tag: string | null;
}

/** Returns the band of a text for a group at a step. */
export function bandOf({ now, step }: Fit, at: number): Band {
  if (now) return 'now';
  return step !== null && step - at <= SOON ? 'soon' : 'later';
}

/** Returns whether a text matches the search and the tag. Case is ignored. */
export function isWanted({ searched, tags }: IndexedText, { search, tag }: Wanted): boolean {
  if (tag !== null && !tags.some((own) => own.toLowerCase() === tag.toLowerCase())) return false;
  return search
    .toLowerCase()
    .split(/\s+/)
    .every((word) => searched.includes(word));
}

/** Returns the texts in the given order. Equal texts are sorted by fit, then newest first. */
export function sortTexts(texts: readonly RankedText[], order: Order): readonly RankedText[] {
  const first = ORDERS[order];
  return texts.toSorted((a, b) => first(a, b) || byFit(a, b) || byNewest(a, b));
}

/** Returns every tag in alphabetical order, with the number of texts that have the tag. */
export function listTags(
  texts: readonly IndexedText[],
): readonly { readonly tag: string; readonly count: number }[] {
  const counts = new Map<string, { tag: string; count: number }>();
  for (const { tags } of texts) {
    for (const tag of tags) {
      const known = counts.get(tag.toLowerCase());
      counts.set(tag.toLowerCase(), { tag: known?.tag ?? tag, count: (known?.count ?? 0) + 1 });
    }
  }
  return [...counts.values()].sort((a, b) => letters.compare(a.tag, b.tag));
}

const letters = new Intl.Collator('en', { numeric: true });

function byFit({ fit: a }: RankedText, { fit: b }: RankedText): number {
  if (a.now !== b.now) return a.now ? -1 : 1;
  if (a.now && a.opened > 0 !== b.opened > 0) return a.opened > 0 ? -1 : 1;
  // For texts that are ready now, the step at which they became ready does not matter.
  const ahead = a.now ? 0 : (a.step ?? Infinity) - (b.step ?? Infinity);
  return (Number.isNaN(ahead) ? 0 : ahead) || b.reach - a.reach;
}

function byNewest({ text: a }: RankedText, { text: b }: RankedText): number {
  return b.shelved - a.shelved;
}

const ORDERS: Readonly<Record<Order, (a: RankedText, b: RankedText) => number>> = {
  fit: byFit,
  practice: (a, b) => Number(b.fit.now) - Number(a.fit.now) || b.fit.opened - a.fit.opened,
  newest: byNewest,
  title: (a, b) => letters.compare(a.text.title, b.text.title),
};
