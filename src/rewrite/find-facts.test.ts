import { expect, test } from 'vitest';
import { fakeTools } from '../../tests/fakes/rewrite-tools.ts';
import { findFacts, findNames } from './find-facts.ts';

const facts = (text: string, names = new Set<string>()) =>
  findFacts(text, fakeTools.read(text), names, fakeTools.denies);

test.each([
  ['In 1,200 boats and 3.5 tons.', ['1200', '3.5']],
  ['Twenty-two gulls', ['22']],
  ['two hundred and five nets', ['205']],
  ['a dozen eggs', ['12']],
  ['One day the red one sank.', []],
  ['two cats, three dogs', ['2', '3']],
  ['at ten and at six', ['10', '6']],
])('the numbers of “%s” are found and written in digits', (text, numbers) => {
  expect(facts(text).numbers).toEqual([...numbers].sort());
});

test.each([
  ['He can’t and she won’t.', 2, 0],
  ['Neither Bram nor Wilma ran.', 1, 0],
  ['Nobody saw it without a lamp.', 2, 0],
  ['He was unhappy and helpless.', 0, 2],
  ['A note on a knot.', 0, 0],
  ['He refused to go into the uncle’s inn.', 0, 1],
])('the full and partial negations of “%s” are counted', (text, negations, softNegations) => {
  expect(facts(text)).toMatchObject({ negations, softNegations });
});

test('a capitalised word is a name inside a sentence, and at its start if the passage has it elsewhere', () => {
  const names = findNames('Then Falk came. I said I’m glad. “Go,” said Mrs. Tull.');
  expect([...names]).toEqual(['falk', 'mrs']);
  expect([...facts('Falk’s boat sank.', new Set(['falk'])).names]).toEqual(['falk']);
  expect([...facts('Boats sank.', new Set(['falk'])).names]).toEqual([]);
});
