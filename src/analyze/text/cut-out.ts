/** Longer pieces are not kept: an engine may keep the whole text for the sake of one of them. */
const LONGEST = 12;
const SLOTS = 8192;
const lately: string[] = new Array(SLOTS).fill('');

/**
 * A piece of a text, in UTF-16 units from `start` to before `end`. Most words of a text have been in it before, and are given again as the
 * same string, so that it need not be made, and is found in a map without looking at its letters.
 */
export function cutOut(text: string, start: number, end: number): string {
  const length = end - start;
  if (length > LONGEST || length < 1) return text.slice(start, end);
  const first = text.charCodeAt(start);
  const middle = text.charCodeAt(start + (length >> 1));
  const last = text.charCodeAt(end - 1);
  const second = text.charCodeAt(start + 1);
  const slot = (((first * 37 + middle) * 37 + last) * 37 + second * 11 + length) & (SLOTS - 1);
  const known = lately[slot]!;
  if (known.length === length && text.startsWith(known, start)) return known;
  const piece = text.slice(start, end);
  lately[slot] = piece;
  return piece;
}
