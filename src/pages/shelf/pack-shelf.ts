import { beginFile } from '../../host/files/wordreach-file.ts';
import { loadWhole, readShelf } from '../../host/store/shelf-store.ts';

/** Texts read from the database at a time. */
const BATCH = 200;

/** The whole shelf as a file, with the texts that are kept; a part of it where ids are given. Rejects with `StorageFault`. */
export async function packShelf(only: ReadonlySet<string> | null, signal: AbortSignal): Promise<Blob> {
  const file = beginFile({ whole: false });
  for await (const slice of readShelf(BATCH)) {
    signal.throwIfAborted();
    const chosen = slice.filter(({ id }) => only === null || only.has(id));
    const whole = await Promise.all(
      chosen.map(async ({ isKept, ...text }) => (isKept ? loadWhole(text.id) : { ...text, text: null })),
    );
    file.add(whole.filter((text) => text !== undefined).map((text) => ({ text })));
  }
  return file.end();
}
