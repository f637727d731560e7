/**
 * The time in milliseconds after which work begins on a document that is still being parsed. One of its scripts may
 * hang.
 */
const LIMIT = 1000;

/**
 * Resolves when a document has been parsed, or when the document has a body and the time limit is over. Content that
 * comes later is a normal change of the page.
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
