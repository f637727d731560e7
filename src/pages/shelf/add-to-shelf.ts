import {
  deleteTexts,
  findAlike,
  freeTextId,
  hasSameWords,
  putTexts,
  type WholeShelfText,
} from '../../host/store/shelf-store.ts';

/** A text that has been counted and can be put on the shelf. */
export type VettedText = Omit<WholeShelfText, 'id' | 'shelved' | 'tags' | 'notes'>;

/** The result of putting a text on the shelf: the text was added, or was already there. */
export interface Shelving {
  readonly id: string;
  readonly outcome: 'shelved' | 'there';
  /** Undoes the changes to the shelf; null if there were none. Rejects with `StorageFault`. */
  readonly undo: (() => Promise<void>) | null;
}

/**
 * Puts a text on the shelf with these tags. If the shelf already has a text with the same title, address and words,
 * that text gets the tags, and also the full text if the full text is to be kept now. Rejects with `StorageFault`.
 */
export async function addToShelf(text: VettedText, tags: readonly string[] = []): Promise<Shelving> {
  const alike = (await findAlike(text)).find((other) => hasSameWords(other, text));
  if (!alike) {
    const id = freeTextId();
    await putTexts([{ ...text, id, shelved: Date.now(), tags: joinTags([], tags), notes: '' }]);
    return { id, outcome: 'shelved', undo: () => deleteTexts([id]) };
  }
  const joined = joinTags(alike.tags, tags);
  const isChanged = joined.length > alike.tags.length || (alike.text === null && text.text !== null);
  if (isChanged) await putTexts([{ ...alike, tags: joined, text: text.text ?? alike.text }]);
  return { id: alike.id, outcome: 'there', undo: isChanged ? () => putTexts([alike]) : null };
}

/** Returns both lists of tags as one list. Each tag appears once, regardless of case. */
export function joinTags(tags: readonly string[], more: readonly string[]): readonly string[] {
  const all = new Map<string, string>();
  for (const tag of [...tags, ...more]) {
    const clean = tag.replace(/\s+/g, ' ').trim();
    if (clean !== '' && !all.has(clean.toLowerCase())) all.set(clean.toLowerCase(), clean);
  }
  return [...all.values()];
}
