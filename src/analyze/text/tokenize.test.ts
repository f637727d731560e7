import { describe, expect, test } from 'vitest';
import { tokenize } from './tokenize.ts';

/** Keys of the words, left-out pieces in square brackets as they stand in the text. */
function keys(text: string): string {
  return tokenize(text)
    .map(({ kind, key, start, end }) => (kind === 'word' ? key : `[${text.slice(start, end)}]`))
    .join(' ');
}

describe('words', () => {
  test.each([
    ['Gulls circle the quay.', 'gulls circle the quay'],
    ["Don't tip the boat", "don't tip the boat"],
    ['Don’t tip the boat', "don't tip the boat"],
    ['well-kept ropes', 'well kept ropes'],
    ['a half-mended net—and rain', 'a half mended net and rain'],
    ['har\u00ADbour', 'harbour'],
    ['a café by the quay', 'a café by the quay'],
    ['cafe\u0301', 'café'],
    ['one/two and/or', 'one two and or'],
    ['(crates) [of] {salt}', 'crates of salt'],
    ['', ''],
    ['…—!', ''],
  ])('%j', (text, expected) => {
    expect(keys(text)).toBe(expected);
  });

  test('spans are those of the text as given', () => {
    const text = 'The har\u00ADbour’s edge';
    expect(tokenize(text).map(({ start, end }) => text.slice(start, end))).toEqual([
      'The',
      'har\u00ADbour’s',
      'edge',
    ]);
  });
});

describe('apostrophes and quotation marks', () => {
  test.each([
    ["the gulls' nests", "the gulls' nests"],
    ['the fishermen’s huts', "the fishermen's huts"],
    ['‘Mind the ropes’ said Odd', 'mind the ropes said Odd'],
    ["'Mind the ropes' said the man", 'mind the ropes said the man'],
    ['“Cast off,” said Wilma.', 'cast off said Wilma'],
    ["the boats'", 'the boats'],
    ["rock 'n' roll", 'rock [n] roll'],
  ])('%j', (text, expected) => {
    expect(keys(text)).toBe(expected);
  });
});

describe('capitals', () => {
  test.each([
    ['Then Duke ran.', 'then Duke ran'],
    ['Duke ran. Then he sat.', 'duke ran then he sat'],
    ['“We wait,” said Bram. “You go.”', 'we wait said Bram you go'],
    ['On Monday I met Ines', 'on Monday i met Ines'],
    ["Today I'm at sea and I'll wave", "today i'm at sea and i'll wave"],
    ['Storm Keeps Marigold In Harbour', 'storm keeps marigold in harbour'],
    ['They met Bram Falk, Wilma Falk.', 'they met Bram Falk Wilma Falk'],
    ['FERRY LATE AGAIN', 'ferry late again'],
    ['He cried STOP to Odd', 'he cried stop to Odd'],
    ['She waved.\n\nOdd waved back', 'she waved odd waved back'],
    ['Mr. Falk and Mrs Falk', '[Mr.] Falk and [Mrs] Falk'],
    ["with O'Brien", "with O'brien"],
  ])('%j', (text, expected) => {
    expect(keys(text)).toBe(expected);
  });
});

describe('what is left out', () => {
  test.each([
    ['at 10:45 on the 3rd', 'at [10:45] on the [3rd]'],
    ['1,200 crates cost £2.50', '[1,200] crates cost [2.50]'],
    ['x2 and H2O', '[x2] and [H2O]'],
    ['see www.tarnquay.example/news now', 'see [www.tarnquay.example/news] now'],
    ['visit https://tarnquay.example.', 'visit [https://tarnquay.example]'],
    ['mail ines@quay.example today', 'mail [ines@quay.example] today'],
    ['#marigold and @quay', '[#marigold] and [@quay]'],
    ['the U.S. coast, e.g. here', 'the [U.S.] coast [e.g.] here'],
    ['on TV', 'on [TV]'],
    ['plan B', 'plan [B]'],
    ['λόγος by the quay', '[λόγος] by the quay'],
    ['⚓ ahoy 🦀', 'ahoy'],
    ['No. 7 is not. No more', '[No.] [7] is not no more'],
  ])('%j', (text, expected) => {
    expect(keys(text)).toBe(expected);
  });
});

// Outside source: Intl.Segmenter (ICU's word boundaries, Unicode Standard Annex 29).
test('plain prose is cut where Unicode word boundaries lie', () => {
  const prose =
    'The Marigold lay at the quay all night. Rain beat on the deck, and nobody came to untie her. By dawn the ' +
    'wind had dropped; a pale sun rose over the fish market, and forty gulls began to shout.';
  const segments = [...new Intl.Segmenter('en', { granularity: 'word' }).segment(prose)];
  const words = segments.filter(({ isWordLike }) => isWordLike).map(({ segment }) => segment);
  expect(tokenize(prose).map(({ start, end }) => prose.slice(start, end))).toEqual(words);
});
