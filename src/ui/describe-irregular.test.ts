import { expect, test } from 'vitest';
import { describeIrregular } from './describe-irregular.ts';

const s = { letters: 's', sound: 'S', pattern: 's' };
const d = { letters: 'd', sound: 'D', pattern: 'd' };

test.each([
  [[s, { letters: 'ai', sound: 'EH', pattern: 'irregular' }, d], 'the ai says ĕ'],
  [[{ letters: 't', sound: '-', pattern: 'irregular' }], 'the t is silent'],
  [[s, { letters: 'a', sound: 'AE', pattern: 'short-a' }, d], ''],
])('the irregular units of %j are described', (units, said) => {
  expect(describeIrregular(units)).toBe(said);
});
