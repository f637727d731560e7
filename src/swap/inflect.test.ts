import { expect, test } from 'vitest';
import { inflect } from './inflect.ts';

const none = { get: () => undefined };
const few = new Map([
  ['go/v/past', 'went'],
  ['advice/n/s', ''],
]);
const some = {
  get: (lemma: string, part: string, form: string) => few.get(`${lemma}/${part}/${form}`),
};

test.each([
  ['stop', 'v', 'past', 'stopped'],
  ['fix', 'v', 'past', 'fixed'],
  ['show', 'v', 'ing', 'showing'],
  ['tie', 'v', 'ing', 'tying'],
  ['see', 'v', 'ing', 'seeing'],
  ['make', 'v', 'ing', 'making'],
  ['carry', 'v', 's', 'carries'],
  ['play', 'v', 's', 'plays'],
  ['box', 'n', 's', 'boxes'],
  ['day', 'n', 's', 'days'],
  ['big', 'a', 'er', 'bigger'],
  ['happy', 'a', 'est', 'happiest'],
  ['simple', 'a', 'er', 'simpler'],
  ['careful', 'a', 'er', 'more careful'],
  ['quickly', 'r', 'er', 'more quickly'],
  ['loudly', 'r', 'est', 'most loudly'],
  ['put out', 'v', 'ing', 'putting out'],
  ['fish market', 'n', 's', 'fish markets'],
  ['worn out', 'a', 'er', 'more worn out'],
  ['piece of rope', 'n', 's', 'pieces of rope'],
] as const)('%s (%s, %s) is inflected as %s', (lemma, part, form, written) => {
  expect(inflect(lemma, part, form, none)).toBe(written);
});

test('a listed irregular form takes precedence over the rule, and an empty listed form means no form', () => {
  expect(inflect('go', 'v', 'past', some)).toBe('went');
  expect(inflect('go on', 'v', 'past', some)).toBe('went on');
  expect(inflect('advice', 'n', 's', some)).toBeNull();
});
