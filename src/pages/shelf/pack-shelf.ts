import { beginFile } from '../../host/files/wordreach-file.ts';
import { loadWhole, readShelf } from '../../host/store/shelf-store.ts';

/** The number of texts read from the database at a time. */
const BATCH = 200;

/**
 * Returns the whole shelf as a file, including the full texts that were kept. If ids are given, returns only these
 * texts. Rejects with `StorageFault`.
 */
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
