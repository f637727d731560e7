/** How far a homograph looks: the topic of a sentence shows within a dozen words. */
export const REACH = 110;

/** A span of a text with no more around it than its context. */
export interface SpanInContext {
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

/**
 * As much of a text around a span as `readContext` looks at: it finds the same there as in the whole. Apart from it, so that a web page, which
 * cuts contexts and has the background read them, does without its patterns.
 */
export function cutContext(text: string, start: number, end: number): SpanInContext {
  const from = Math.max(start - REACH - 1, 0);
  return { text: text.slice(from, end + REACH), start: start - from, end: end - from };
}
