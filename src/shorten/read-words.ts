import { cutWords, type Piece, type SwapTable } from '../swap/index.ts';
import { kindOf, placeOf } from './kind-rules.ts';
import type { Word } from './types.ts';

const OPEN = /^["“([]$/;

/** Returns the words and punctuation marks of a sentence, each with its probable kind. */
export function readWords(sentence: string, table: SwapTable): Word[] {
  const pieces = cutWords(sentence).flatMap(partNumber);
  const words: Word[] = [];
  let closing: string | null = null;
  for (const [i, { start, end, lower }] of pieces.entries()) {
    const text = sentence.slice(start, end);
    const isWord = /[\p{L}\d]/u.test(text);
    let isInside = closing !== null;
    if (!isWord) {
      if (closing !== null && text === closing) closing = null;
      else if (closing === null && OPEN.test(text)) {
        const wanted: string = text === '“' ? '”' : text === '(' ? ')' : text === '[' ? ']' : '"';
        const isClosed = pieces.some(
          (piece, j) => j > i && sentence.slice(piece.start, piece.end) === wanted,
        );
        // Speech that is closed in a later sentence continues to the end of this one.
        if (isClosed || /["“]/.test(text)) {
          closing = wanted;
          isInside = true;
        }
      }
      words.push({ start, end, text, lower, kind: 'mark', form: null, sure: 1, isInside });
      continue;
    }
    const isFirst = words.every(({ kind }) => kind === 'mark') || OPEN.test(words.at(-1)?.text ?? '');
    const said = kindOf(placeOf(sentence, pieces, i, isFirst), pieces, i, table);
    words.push({ start, end, text, lower, isInside, ...said });
  }
  return words;
}

/** Splits the comma or full stop from a number, as a separate mark: 4, and 4. */
function partNumber(piece: Piece): Piece[] {
  const [, digits, mark] = /^(\d.*?)([.,])$/.exec(piece.lower) ?? [];
  if (digits === undefined || mark === undefined) return [piece];
  const middle = piece.end - 1;
  return [
    { start: piece.start, end: middle, lower: digits },
    { start: middle, end: piece.end, lower: mark },
  ];
}
