import { deleteTexts, loadWhole, putTexts } from '../../host/store/shelf-store.ts';
import { noteEdit } from '../../ui/edit-log.ts';
import { say } from '../../wording/say.ts';

/** Deletes texts of the shelf with all that is kept of them, in a way that can be undone. Rejects with `StorageFault`. */
export async function removeTexts(ids: readonly string[]): Promise<void> {
  const whole = (await Promise.all(ids.map(loadWhole))).filter((text) => text !== undefined);
  await deleteTexts(ids);
  noteEdit(say('shelf.deleted', { count: whole.length }), () => putTexts(whole));
}
