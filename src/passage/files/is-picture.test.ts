import { expect, test } from 'vitest';
import { isPictureFile } from './is-picture.ts';

const blobOf = (start: string): Blob =>
  new Blob([Uint8Array.from(start.padEnd(20, '\0'), (letter) => letter.charCodeAt(0))]);

// The first bytes are from the specifications of the formats: PNG, JFIF, WebP, GIF, BMP, and ISO base media files
// (AVIF, HEIF).
test.each([
  ['png', '\x89PNG\r\n\x1a\n'],
  ['jpg', '\xff\xd8\xff\xe0\0\x10JFIF'],
  ['webp', 'RIFF\x24\0\0\0WEBPVP8 '],
  ['gif', 'GIF89a'],
  ['bmp', 'BM\x36\0\0\0\0\0\0\0'],
  ['avif', '\0\0\0\x20ftypavif'],
  ['heic', '\0\0\0\x24ftypheic'],
])('a %s file is a picture', async (_kind, start) => {
  expect(await isPictureFile(blobOf(start))).toBe(true);
});

test.each([
  ['a pdf', '%PDF-1.7'],
  ['a zip', 'PK\x03\x04'],
  ['a story', 'BM went to the quay'],
  ['a film', '\0\0\0\x20ftypisom'],
  ['nothing', ''],
])('%s is not a picture', async (_kind, start) => {
  expect(await isPictureFile(blobOf(start))).toBe(false);
});
