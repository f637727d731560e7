import type { Span } from '../types.ts';

/** Cheap sign that a text may hold an address at all; most do not. */
const SIGN = /[@#]|:\/\/|www\.|[a-z]\.(?:com|org|net|edu|gov|info|example|uk)\b/;
const ADDRESS =
  /(?:https?:\/\/|www\.)[^\s<>"“”]*[^\s<>"“”.,;:!?)\]]|[\p{L}\p{N}._%+-]{1,64}@[\p{L}\p{N}-]{1,64}(?:\.[\p{L}\p{N}-]{1,64})+|(?<![\p{L}\p{N}])[@#][\p{L}\p{N}_]+|(?:[\p{L}\p{N}-]{1,64}\.){1,4}(?:com|org|net|edu|gov|info|example|uk)\b(?:\/[^\s<>"“”]*)?/gu;

/** Web and mail addresses, @names and #tags, in order: www.tarnquay.example, ines@quay.example; not and/or. */
export function findAddresses(text: string): Span[] {
  if (!SIGN.test(text)) return [];
  return Array.from(text.matchAll(ADDRESS), ({ index, 0: found }) => ({
    start: index,
    end: index + found.length,
  }));
}
