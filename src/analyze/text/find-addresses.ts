import type { Span } from '../types.ts';

/** Signs that a stretch without spaces may hold an address; most do not. */
const SIGN = /[@#]|:\/\/|www\.|\.(?:com|org|net|edu|gov|info|example|uk)\b/g;
const ADDRESS =
  /(?:https?:\/\/|www\.)[^<>"“”]*[^<>"“”.,;:!?)\]]|[\p{L}\p{N}._%+-]{1,64}@[\p{L}\p{N}-]{1,64}(?:\.[\p{L}\p{N}-]{1,64})+|(?<![\p{L}\p{N}])[@#][\p{L}\p{N}_]+|(?:[\p{L}\p{N}-]{1,64}\.){1,4}(?:com|org|net|edu|gov|info|example|uk)\b(?:\/[^<>"“”]*)?/gu;
const SPACE = /\s/;

/** Web and mail addresses, @names and #tags, in order: www.tarnquay.example, ines@quay.example; not and/or. */
export function findAddresses(text: string): Span[] {
  const found: Span[] = [];
  let done = 0;
  for (const { index } of text.matchAll(SIGN)) {
    if (index < done) continue;
    let from = index;
    while (from > done && !SPACE.test(text[from - 1]!)) from--;
    done = index + 1;
    while (done < text.length && !SPACE.test(text[done]!)) done++;
    for (const match of text.slice(from, done).matchAll(ADDRESS)) {
      const start = from + match.index;
      found.push({ start, end: start + match[0].length });
    }
  }
  return found;
}
