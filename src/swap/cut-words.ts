/** A word, number or punctuation mark of a sentence. `lower` is the form used for look-up. */
export interface Piece {
  readonly start: number;
  readonly end: number;
  readonly lower: string;
}

/** Cuts the sentence into words with their apostrophes, numbers, and single marks such as hyphens. */
export function cutWords(sentence: string): Piece[] {
  return [...sentence.matchAll(/[\p{L}\p{M}]+(?:['’][\p{L}]+)*|\d[\d.,]*|[^\s]/gu)].map((match) => ({
    start: match.index,
    end: match.index + match[0].length,
    lower: match[0].toLowerCase().replaceAll('’', "'"),
  }));
}
