import { expect, test } from 'vitest';
import { ruleOut } from './rule-out.ts';

const noun = { lemma: 'rival', part: 'n', form: 's' } as const;
const verb = { lemma: 'rival', part: 'v', form: 's' } as const;
const adjective = { lemma: 'celebrated', part: 'a', form: 'base' } as const;

test('after a form of be stands no verb in -s', () => {
  expect(ruleOut(verb, 'are', 'at')).toBeLessThan(0);
  expect(ruleOut(noun, 'are', 'at')).toBe(0);
});

test('after a name it may', () => {
  expect(ruleOut(verb, 'bram', 'the')).toBe(0);
});

test('before a possessive stands no adjective, unless a form of be goes before', () => {
  expect(ruleOut(adjective, 'town', 'its')).toBeLessThan(0);
  expect(ruleOut(adjective, 'is', 'the')).toBe(0);
  expect(ruleOut(adjective, 'the', 'singer')).toBe(0);
});

test('after a modal stands no noun', () => {
  expect(ruleOut({ lemma: 'damage', part: 'n', form: 'base' }, 'can', 'the')).toBeLessThan(0);
});
