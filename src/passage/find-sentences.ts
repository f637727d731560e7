/** A sentence of a line, by UTF-16 units. */
export interface SentenceSpan {
  readonly start: number;
  readonly end: number;
  /** How many words it has. */
  readonly words: number;
}

const sentences = new Intl.Segmenter('en', { granularity: 'sentence' });

/** The sentences of a line (as Unicode UAX #29 cuts them). */
export function findSentences(line: string): SentenceSpan[] {
  return [...sentences.segment(line)].map(({ segment, index }) => ({
    start: index,
    end: index + segment.trimEnd().length,
    words: segment.match(/[\p{L}\p{N}]+(?:['’-][\p{L}\p{N}]+)*/gu)?.length ?? 0,
  }));
}

/** Those with more words than `longest`. */
export function findLongSentences(line: string, longest: number): SentenceSpan[] {
  return findSentences(line).filter(({ words }) => words > longest);
}
