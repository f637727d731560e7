import { describe, expect, test } from 'vitest';
import { cutWords } from './cut-words.ts';
import { correctArticle, likeCapitals, putInForm } from './put-in-form.ts';

const few = {
  get: (lemma: string, _part: string, form: string) =>
    lemma === 'make' && form === 'participle' ? 'made' : undefined,
};
const place = (sentence: string, word: string) => {
  const pieces = cutWords(sentence);
  return [pieces, pieces.findIndex(({ lower }) => lower === word)] as const;
};

describe('putInForm', () => {
  test.each([
    [
      'a phrasal verb stands before a noun',
      'They quenched the fire.',
      'quenched',
      'pick up',
      'past',
      'picked up',
    ],
    ['but not before a pronoun', 'They quenched it.', 'quenched', 'pick up', 'past', null],
    [
      'a verb with a preposition does stand there',
      'They examined it.',
      'examined',
      'look at',
      'past',
      'looked at',
    ],
    ['but not without an object', 'They examined.', 'examined', 'look at', 'past', null],
    ['an object cannot stand inside a swap', 'They enlarged it.', 'enlarged', 'make bigger', 'past', null],
    [
      'which is no matter without one',
      'It was enlarged.',
      'enlarged',
      'make bigger',
      'participle',
      'made bigger',
    ],
    ['nor a second time', 'They enquired about it.', 'enquired', 'ask about', 'past', 'asked'],
  ] as const)('%s', (_name, sentence, word, lemma, form, text) => {
    expect(putInForm(lemma, 'v', form, ...place(sentence, word), few)).toBe(text);
  });

  test('does not repeat a first word that is already there', () => {
    const [pieces, at] = place('It was very perilous.', 'perilous');
    expect(putInForm('very bad', 'a', 'base', pieces, at, few)).toBe('bad');
  });

  test('does not repeat “more”', () => {
    const [pieces, at] = place('It grew more perilous.', 'perilous');
    expect(putInForm('careful', 'a', 'er', pieces, at, few)).toBe('careful');
  });
});

test.each([
  ['huge', 'immense', 'huge'],
  ['huge', 'Immense', 'Huge'],
  ['put out', 'IMMENSE', 'PUT OUT'],
  ['i', 'A', 'I'],
])('%s takes the capitals of %s: %s', (text, model, written) => {
  expect(likeCapitals(text, model)).toBe(written);
});

describe('correctArticle', () => {
  const takesOther = (word: string) => word === 'hour' || word === 'unit';
  test.each([
    ['It was an enormous wave.', 'an', 'huge', { start: 7, end: 9, text: 'a' }],
    ['A huge wave.', 'a', 'enormous', { start: 0, end: 1, text: 'An' }],
    ['A huge wave.', 'a', 'big', null],
    ['Wait a while.', 'a', 'hour', { start: 5, end: 6, text: 'an' }],
    ['It is an object.', 'an', 'unit', { start: 6, end: 8, text: 'a' }],
    ['The huge wave.', 'the', 'enormous', null],
  ])('in “%s”, checks the article “%s” before the swap “%s”', (sentence, word, text, edit) => {
    const [pieces, at] = place(sentence, word);
    expect(correctArticle(sentence, pieces[at], text, takesOther)).toEqual(edit);
  });
});
