import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cutPhrases } from './cut-phrases.ts';

// A rule, a sentence for it, and one where it must not break.
test.each([
  ['before a preposition', 'Her brother works | on a ship'],
  ['not between a preposition and what follows', 'A small boat | with a white sail'],
  ['after a comma', 'The ferry is late, | so we have to wait.'],
  ['not in a row of words for one thing', 'It was a cold, wet night'],
  ['before and with a new doing', 'They took the oars | and went home.'],
  ['not before the second of two words', 'Otto and Bram ran.'],
  ['after a longer subject', 'The old ferry | came slowly'],
  ['not after a subject of one word', 'She laughed.'],
  ['before a clause', 'We could not hear him | because the wind blew.'],
  ['not inside as … as', 'Wilma can swim | as fast as a seal.'],
  ['before that with a clause', 'Bram thinks | that the crab is here.'],
  ['not before the little word of a verb', 'The lamp went on'],
  ['to of a place', 'He ran back | to the school'],
  ['not to of a doing that is wanted', 'Otto wanted to catch a crab'],
  ['not after a title', '“Row!” | said Mr. Falk.'],
])('%s: %s', (_, phrases) => {
  expect(cutPhrases(phrases.replaceAll(' | ', ' ')).join(' | ')).toBe(phrases);
});

test('nothing is lost, whatever the text', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), (text) => {
      expect(cutPhrases(text).join(' ')).toBe(text.split(/\s+/).filter(Boolean).join(' '));
    }),
    { seed: 20261125, numRuns: 200 },
  );
  expect(cutPhrases('')).toEqual([]);
});
