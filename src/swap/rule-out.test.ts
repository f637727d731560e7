import { expect, test } from 'vitest';
import { ruleOut } from './rule-out.ts';

const noun = { lemma: 'rival', part: 'n', form: 's' } as const;
const verb = { lemma: 'rival', part: 'v', form: 's' } as const;
const adjective = { lemma: 'celebrated', part: 'a', form: 'base' } as const;

test('no verb in -s is accepted after a form of be', () => {
  expect(ruleOut(verb, 'are', 'at')).toBeLessThan(0);
  expect(ruleOut(noun, 'are', 'at')).toBe(0);
});

test('a verb in -s is accepted after a name', () => {
  expect(ruleOut(verb, 'bram', 'the')).toBe(0);
});

test('no adjective is accepted before a possessive, unless after a form of be', () => {
  expect(ruleOut(adjective, 'town', 'its')).toBeLessThan(0);
  expect(ruleOut(adjective, 'is', 'the')).toBe(0);
  expect(ruleOut(adjective, 'the', 'singer')).toBe(0);
});

test('no noun is accepted after a modal verb', () => {
  expect(ruleOut({ lemma: 'damage', part: 'n', form: 'base' }, 'can', 'the')).toBeLessThan(0);
});
