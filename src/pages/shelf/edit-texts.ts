import {
  changeText,
  deleteTexts,
  loadWhole,
  putTexts,
  type ShelfChange,
  type ShelfText,
} from '../../host/store/shelf-store.ts';
import { noteEdit } from '../../ui/edit-log.ts';
import { say } from '../../wording/say.ts';

/** Deletes texts of the shelf with all their stored data. The deletion can be undone. Rejects with `StorageFault`. */
export async function removeTexts(
  ids: readonly string[],
  says = (count: number): string => say('shelf.deleted', { count }),
): Promise<void> {
  const whole = (await Promise.all(ids.map(loadWhole))).filter((text) => text !== undefined);
  await deleteTexts(ids);
  noteEdit(says(whole.length), () => putTexts(whole));
}

/**
 * Changes title, tags or notes of a text. An undo restores only the parts that were changed. Rejects with
 * `StorageFault`.
 */
export async function editText(
  id: string,
  says: string,
  change: (text: ShelfText) => ShelfChange,
): Promise<void> {
  let before: ShelfChange = {};
  await changeText(id, (text) => {
    const changed = change(text);
    const { title, tags, notes } = text;
    before = Object.fromEntries(Object.entries({ title, tags, notes }).filter(([part]) => part in changed));
    return changed;
  });
  noteEdit(says, () => changeText(id, () => before));
}
