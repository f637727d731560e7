import {
  deleteTexts,
  findAlike,
  freeTextId,
  hasSameWords,
  putTexts,
  type WholeShelfText,
} from '../../host/store/shelf-store.ts';

/** A text that was counted and may go to the shelf. */
export type VettedText = Omit<WholeShelfText, 'id' | 'shelved' | 'tags' | 'notes'>;

/** The outcome: put there, or found there already. */
export interface Shelving {
  readonly id: string;
  readonly outcome: 'shelved' | 'there';
  /** Takes the changes of the shelf back; null where there were none. Rejects with `StorageFault`. */
  readonly undo: (() => Promise<void>) | null;
}

/**
 * Puts a text on the shelf with these tags. One with the same title, address and words that is there already is found again, and
 * gets the tags, and the text if that is to be kept now. Rejects with `StorageFault`.
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

/** Both lists of tags as one, each tag once, whatever its case. */
export function joinTags(tags: readonly string[], more: readonly string[]): readonly string[] {
  const all = new Map<string, string>();
  for (const tag of [...tags, ...more]) {
    const clean = tag.replace(/\s+/g, ' ').trim();
    if (clean !== '' && !all.has(clean.toLowerCase())) all.set(clean.toLowerCase(), clean);
  }
  return [...all.values()];
}
