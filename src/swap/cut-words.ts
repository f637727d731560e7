/** A word, number or mark of a sentence; `lower` is how it is looked up. */
export interface Piece {
  readonly start: number;
  readonly end: number;
  readonly lower: string;
}

/** The sentence in pieces: words with their apostrophes and hyphens, numbers, single marks. */
export function cutWords(sentence: string): Piece[] {
  return [...sentence.matchAll(/[\p{L}\p{M}]+(?:['’][\p{L}]+)*|\d[\d.,]*|[^\s]/gu)].map((match) => ({
    start: match.index,
    end: match.index + match[0].length,
    lower: match[0].toLowerCase().replaceAll('’', "'"),
  }));
}
