import { describe, expect, test } from 'vitest';
import { ILLEGAL, isLegal } from './is-legal.ts';

describe('illegal spellings', () => {
  test.each(ILLEGAL)('%s excludes %s and allows %s', (spelling, out, leaves) => {
    expect(spelling.test(out.replace('qu', 'q'))).toBe(true);
    expect(isLegal(leaves)).toBe(true);
  });
});

test.each(['blim', 'spode', 'meck', 'quitch', 'chell', 'stroat'])('%s is legal', (word) =>
  expect(isLegal(word)).toBe(true),
);

test.each(['at', 'mif', 'mic', 'kug', 'kag', 'swab'])('%s is not legal', (word) =>
  expect(isLegal(word)).toBe(false),
);
