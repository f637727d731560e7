import { expect, test } from 'vitest';
import { decodeText, isText } from './decode-text.ts';

const says = 'Otto’s café';

test.each<[string, number[]]>([
  ['UTF-8', [...new TextEncoder().encode(says)]],
  ['UTF-8 with a mark', [0xef, 0xbb, 0xbf, ...new TextEncoder().encode(says)]],
  ['UTF-16, low byte first', [0xff, 0xfe, ...Buffer.from(says, 'utf16le')]],
  ['UTF-16, high byte first', [0xfe, 0xff, ...Buffer.from(says, 'utf16le').swap16()]],
])('detects the encoding of a file: %s', (_, bytes) => {
  expect(decodeText(Uint8Array.from(bytes))).toBe(says);
});

test('the charset that a page names is used for text that is not UTF-8, unless the charset is unknown', () => {
  expect(decodeText(Uint8Array.of(0xcf, 0xc8), 'koi8-r')).toBe('ох');
  expect(decodeText(Uint8Array.of(0xe9), 'no-such')).toBe('é');
});

test('bytes that are not text are detected', () => {
  expect(isText('Nets\tand\r\nropes\f')).toBe(true);
  expect(isText('\0\x01\x02')).toBe(false);
});
