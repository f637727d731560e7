/** The first bytes by which a file states its encoding (byte order marks). */
const MARKS: readonly (readonly [encoding: string, bytes: readonly number[]])[] = [
  ['utf-8', [0xef, 0xbb, 0xbf]],
  ['utf-16le', [0xff, 0xfe]],
  ['utf-16be', [0xfe, 0xff]],
];

/**
 * Decodes the bytes of a text file. Never throws. The first of these encodings that fits is used:
 * - the encoding that the first bytes state
 * - UTF-8
 * - `named`, the charset that a page names
 * - Windows-1252, which older programs write (WHATWG Encoding)
 */
export function decodeText(bytes: Uint8Array, named: string | null = null): string {
  const mark = MARKS.find(([, start]) => start.every((byte, n) => bytes[n] === byte));
  if (mark) return new TextDecoder(mark[0]).decode(bytes);
  return (
    decodeAs('utf-8', bytes) ?? decodeAs(named ?? 'windows-1252', bytes) ?? decodeAs('windows-1252', bytes)!
  );
}

function decodeAs(encoding: string, bytes: Uint8Array): string | null {
  try {
    return new TextDecoder(encoding, { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}

/** Tells whether decoded bytes are a text. Bytes that are not text give characters that nobody writes. */
export function isText(text: string): boolean {
  let most = text.length / 1000;
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are looked for
  const strange = /[\0-\x08\x0e-\x1a\x1c-\x1f\ufffd]/g;
  // The characters are counted one by one, because a list of all of them may be larger than the memory.
  while (strange.test(text)) if (--most < 0) return false;
  return true;
}
