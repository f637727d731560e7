import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { cutWords } from './cut-words.ts';
import { openSwaps } from './open-swaps.ts';
import listed from './phrase-swaps.json' with { type: 'json' };
import { findPhraseSwaps, readPhraseRules } from './phrase-swaps.ts';

const table = openSwaps(readFileSync(new URL('../../public/data/swaps.bin', import.meta.url)));
const rules = readPhraseRules(listed);

/** Returns the sentence with the first plainer wording for the word in square brackets, or null. */
function plainer(marked: string): string | null {
  const start = marked.indexOf('[');
  const sentence = marked.replace(/[[\]]/g, '');
  const pieces = cutWords(sentence);
  const at = pieces.findIndex((piece) => piece.start === start);
  const [found] = findPhraseSwaps(sentence, pieces, at, false, table, rules);
  if (!found) return null;
  const after = sentence.slice(0, found.start) + found.text + sentence.slice(found.end);
  const { article } = found;
  return article ? after.slice(0, article.start) + article.text + after.slice(article.end) : after;
}

describe('a phrase is replaced by plainer words', () => {
  test.each([
    ['He ran in [order] to get it.', 'He ran to get it.'],
    ['In [order] to get it, he ran.', 'To get it, he ran.'],
    ['[However], the ship sank.', 'But the ship sank.'],
    ['Wilma sat [upon] the deck.', 'Wilma sat on the deck.'],
    ['It was [magnificent].', null],
    ['Bram got a [magnificent] ship.', 'Bram got a ship.'],
    ['They rowed to a [beautiful] inlet.', 'They rowed to an inlet.'],
    ['It was really a [beautiful] inlet.', null],
    ['[Gently] place the lamp on it.', null],
    ['Otto, of [course], ran off.', 'Otto ran off.'],
    ['He did [really] well, and he was glad.', 'He did well, and he was glad.'],
    ['He was not [really] hurt by it.', null],
    ['[Specifically], Bram ran.', null],
    ['Bram had [thirteen] lamps.', 'Bram had 13 lamps.'],
    ['Bram had [two] lamps.', 'Bram had 2 lamps.'],
    ['Bram had [two] or three lamps.', null],
    ['Bram had [two] red lamps.', 'Bram had 2 red lamps.'],
    ['It was a [two] dimensional plan.', null],
    ['Bram had [thirteen] lamps and sixty bells.', null],
    ['[Thirteen] lamps were lit.', null],
    ["[He's] not on the ferry.", 'He is not on the ferry.'],
    ["[He's] been on the ferry.", 'He has been on the ferry.'],
    ["[He's] lost a lamp.", null],
    ['It was late, [although] the lamp was lit.', 'It was late, but the lamp was lit.'],
    ['He left because, [although] it was late, it was fine.', null],
    ['It was where his [beloved] met him.', null],
    ['His [beloved] ship sank.', 'His ship sank.'],
    ['It was what he saw most [clearly] of all.', null],
    ['The lamps and the ship were sold [again].', 'The lamps and the ship were sold once more.'],
    ['He never saw it [again].', null],
    ['They [accepted] the offer.', 'They took the offer.'],
    ['They had [accepted] the offer.', null],
    ['It is [accepting] the offer.', 'It is taking the offer.'],
  ])('“%s” becomes “%s”', (marked, said) => {
    expect(plainer(marked)).toBe(said);
  });
});

test('each rule has one swap form for each form of its words, or one for all forms', () => {
  const wrong = listed.rules.filter(({ says, swaps }) => {
    const forms = says.split('/').length;
    return swaps.split('|').some((swap) => ![1, forms].includes(swap.split('/').length));
  });
  expect(wrong).toEqual([]);
});
