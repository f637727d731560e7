/**
 * The number of characters before and after a homograph that belong to its context. The topic of a sentence shows
 * within a dozen words.
 */
export const REACH = 110;

/** A span in a text that is cut down to the context of the span. */
export interface SpanInContext {
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

/**
 * Cuts a text to the part around a span that `readContext` reads. `readContext` finds the same context in this part as
 * in the whole text. The function is in a separate file because a web page cuts contexts and has the background read
 * them. The page therefore does not need the patterns of `readContext`.
 */
export function cutContext(text: string, start: number, end: number): SpanInContext {
  const from = Math.max(start - REACH - 1, 0);
  return { text: text.slice(from, end + REACH), start: start - from, end: end - from };
}
