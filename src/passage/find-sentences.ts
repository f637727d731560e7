import { findSentences as cutSentences } from '../analyze/index.ts';

/** A sentence of a line. Its offsets are in UTF-16 units. */
export interface SentenceSpan {
  readonly start: number;
  readonly end: number;
  /** The number of words in the sentence. */
  readonly words: number;
}

/** The sentences of a line. */
export function findSentences(line: string): SentenceSpan[] {
  return cutSentences(line).map(({ start, end }) => {
    const sentence = line.slice(start, end);
    return {
      start,
      end: start + sentence.trimEnd().length,
      words: sentence.match(/[\p{L}\p{N}]+(?:['’-][\p{L}\p{N}]+)*/gu)?.length ?? 0,
    };
  });
}

/** The sentences with more words than `longest`. */
export function findLongSentences(line: string, longest: number): SentenceSpan[] {
  return findSentences(line).filter(({ words }) => words > longest);
}
