/** A document that is still being read after so long, in milliseconds, is begun with all the same: a script of it may hang. */
const LIMIT = 1000;

/**
 * Settles when a document has been read to its end, or when it has a body and has been waited for long enough. What comes
 * later is a change of the page like any other.
 */
export async function whenParsed(doc: Document, signal: AbortSignal): Promise<void> {
  if (doc.readyState !== 'loading') return;
  let timer: ReturnType<typeof setTimeout> | undefined;
  await new Promise<void>((resolve) => {
    doc.addEventListener('readystatechange', () => resolve(), { once: true, signal });
    signal.addEventListener('abort', () => resolve());
    timer = setTimeout(() => doc.body && resolve(), LIMIT);
  });
  clearTimeout(timer);
}
