import { expect, test } from 'vitest';
import { readAddress, writeAddress } from './address.ts';

test.each([['text'], ['passage', 'a b', 'was/is', '50 %'], ['group', ''], ['group', '__proto__', 'é#']])(
  'an address of %j and %j is read as it was written',
  (...parts) => {
    expect(readAddress(writeAddress(...parts))).toEqual(parts);
  },
);

test('a part that cannot be decoded is returned as it is written', () => {
  expect(readAddress('#group/50%/a%20b')).toEqual(['group', '50%', 'a b']);
});

test('a page without an address has one empty part', () => {
  expect(readAddress('')).toEqual(['']);
});
