import { expect, test } from 'vitest';
import { findForms } from './find-forms.ts';

const lemmas = new Set([
  'walk/n',
  'walk/v',
  'string/n',
  'string/v',
  'leave/v',
  'left/a',
  'busy/a',
  'visit/v',
]);
const irregular = new Map([
  ['leave/v/past', 'left'],
  ['visit/v/past', 'visited'],
]);
const table = {
  isLemma: (word: string, part: string) => lemmas.has(`${word}/${part}`),
  irregularOf: (form: string) =>
    form === 'left' ? [{ lemma: 'leave', part: 'v', form: 'past' } as const] : [],
  get: (lemma: string, part: string, form: string) => irregular.get(`${lemma}/${part}/${form}`),
};
const found = (word: string) =>
  findForms(word, table).map(({ lemma, part, form }) => `${lemma} ${part} ${form}`);

test('a form can belong to a noun and to a verb', () => {
  expect(found('walks')).toEqual(['walk n s', 'walk v s']);
});

test('a regular form is found by its ending and an irregular one in the list', () => {
  expect(found('busier')).toEqual(['busy a er']);
  expect(found('left')).toEqual(['leave v past', 'left a base']);
});

test('an ending counts only if the form would be spelt that way', () => {
  expect(found('string')).toEqual(['string n base', 'string v base']);
  expect(found('visitted')).toEqual([]);
});
