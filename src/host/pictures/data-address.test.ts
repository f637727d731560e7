import { expect, test } from 'vitest';
import { readDataAddress, writeDataAddress } from './data-address.ts';

test('a picture read from its data address equals the picture that was written', async () => {
  const bytes = Uint8Array.from({ length: 70_000 }, (_, n) => (n * 7) % 256);
  const blob = readDataAddress(writeDataAddress(bytes, 'image/png'));
  expect(blob.type).toBe('image/png');
  expect(new Uint8Array(await blob.arrayBuffer())).toEqual(bytes);
});

test('an address that holds no picture gives an empty blob', () => {
  expect(readDataAddress('').size).toBe(0);
  expect(readDataAddress('https://example.org/a.png').size).toBe(0);
});
