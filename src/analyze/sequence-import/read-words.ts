import { findColumnKind } from './column-kinds.ts';

/**
 * Returns the words of a by-sight list, without its name: `Sight words: the, of (review: to)` has the, of, review, to.
 * Apostrophes become straight. If every word has a capital, the list becomes lower case, except I.
 */
export function readWords(text: string): string[] {
  const words =
    withoutName(text).match(/(?<![\p{L}\p{N}])\p{L}[\p{L}\p{M}]*(?:['\u2019\u02bc-]\p{L}+)*/gu) ?? [];
  const straight = words.map((word) => word.replace(/[\u2019\u02bc]/g, "'"));
  const titled = straight.length > 1 && straight.every((word) => /^\p{Lu}/u.test(word));
  const shouted = straight.some((word) => word.length > 1 && word === word.toUpperCase());
  const plain = straight.map((word) => (word !== 'I' && (titled || shouted) ? word.toLowerCase() : word));
  return [...new Set(plain.map((word) => (word === 'i' ? 'I' : word)))];
}

export function withoutName(text: string): string {
  // The words may be in brackets after a numbered name: "tricky words set 1 (the, to)".
  const listed = /^[^:(]*\b(?:words?|hfws?)\b[^:(]*\d\s*\(([^)]+)\)\s*$/i.exec(text);
  if (listed !== null) return listed[1]!;
  const name = /^[^:–—(]*(?:[:–—]|(?<=\s)-(?=\s))/u.exec(text)?.[0];
  // In "Sight words for the year: about" the name has more words before the colon.
  const starts = (name ?? '').split(/\s+/).map((_, i, all) => all.slice(0, i + 1).join(' '));
  // In "Sight words they, said - ship" the words begin before the dash.
  if (
    name !== undefined &&
    !name.includes(',') &&
    starts.slice(0, 4).some((start) => findColumnKind(start) === 'by-sight')
  )
    return text.slice(name.length);
  const words = text.split(/\s+/);
  for (let length = Math.min(4, words.length - 1); length > 0; length--) {
    if (findColumnKind(words.slice(0, length).join(' ')) === 'by-sight') return words.slice(length).join(' ');
    if (findColumnKind(words.slice(-length).join(' ').replace(/[()]/g, '')) === 'by-sight')
      return words.slice(0, -length).join(' ');
  }
  return text;
}
