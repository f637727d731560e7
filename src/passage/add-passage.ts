import { loadPassages, savePassage } from '../host/store/passages-store.ts';
import type { FoundText } from './found-text.ts';
import { freePassageId, type Passage } from './kept/passage.ts';

/** Adds a text to the desk and returns the text's id. Rejects with `StorageFault` if the text cannot be saved. */
export async function addPassage({
  title,
  text,
  url = null,
  byline = null,
  date = null,
}: FoundText): Promise<string> {
  const passage: Passage = {
    id: freePassageId(),
    title,
    source: { url, byline, date },
    original: text,
    versions: {},
    rev: 0,
    saved: 0,
  };
  return (await savePassage(passage)).passage.id;
}

/**
 * Adds a text to the desk, unless a passage with the same address and the same original text is there already. In that
 * case, returns the id of that passage.
 */
export async function addPassageOnce(found: FoundText): Promise<{ id: string; isNew: boolean }> {
  const before = (await loadPassages()).find(
    ({ source, original }) => source.url === (found.url ?? null) && original === found.text,
  );
  return before ? { id: before.id, isNew: false } : { id: await addPassage(found), isNew: true };
}
