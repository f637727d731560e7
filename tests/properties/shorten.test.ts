import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { findSentences } from '../../src/analyze/index.ts';
import { DROP_RULES } from '../../src/shorten/drop-rules.ts';
import { createShortener } from '../../src/shorten/index.ts';
import { SPLIT_RULES } from '../../src/shorten/split-rules.ts';
import { openSwaps } from '../../src/swap/index.ts';

const shortener = createShortener(openSwaps(readFileSync('public/data/swaps.bin')));
const wordsOf = (text: string): string[] => text.match(/[\p{L}\d]+(?:[’'][\p{L}]+)*/gu) ?? [];
/** Counts every word as beyond, so that each rule is used wherever possible. */
const measure = (text: string) => ({ words: wordsOf(text).length, beyond: wordsOf(text).length });

/**
 * Parts of sentences, put together at random. Some are parts that the rules look for, and some are parts that the rules
 * must leave.
 */
const part = fc.constantFrom(
  ...[
    'Bram',
    'the old ferry',
    'Wilma, a girl of nine',
    'two boats',
    'he',
    'they',
    'Mr. Falk',
    'a long, narrow rope',
  ],
  ...[
    'ran',
    'slowly turned',
    'was late',
    'did not see',
    'had been very old',
    'grabbed',
    'sank in 1912',
    'is able to swim',
  ],
  ...[
    ',',
    ', who was tired,',
    ', wiping his hands',
    '(a small one)',
    '; ',
    ' — ',
    'and',
    ', but',
    ', so',
    ', which was red',
  ],
  ...[
    'Unfortunately,',
    'However,',
    'In the morning,',
    'On May 4, 1912,',
    'although it rained',
    'because it rained',
    'if',
  ],
  ...[
    'the quay',
    'to the sea',
    'in order to row',
    'never',
    'hardly',
    '“Row!”',
    '“',
    '”',
    '(',
    '[',
    '$5.50',
    '4,',
    'no one',
  ],
);
const sentence = fc
  .tuple(fc.array(part, { minLength: 1, maxLength: 12 }), fc.constantFrom('.', '?', '!', '…', ''))
  .map(([parts, end]) => parts.join(' ').replace(/ ([,;])/g, '$1') + end);
/**
 * Two clauses joined by a conjunction, a relative pronoun or a punctuation mark. Some of the clauses cannot be
 * separated.
 */
const double = fc
  .tuple(
    fc.constantFrom('', 'Although ', 'After ', 'If ', 'Then '),
    fc.constantFrom('the old ferry', 'Bram', 'they', 'no one', 'Wilma and Bram'),
    fc.constantFrom('came to the quay', 'was not late', 'said that it rained', 'grabbed the rope'),
    fc.constantFrom(', and ', ', but ', '; ', ' because ', ', so ', ' — ', ', ', ', although ', ', which '),
    fc.constantFrom('he', 'the fog', 'Bram', 'boats', ''),
    fc.constantFrom('came in', 'was thick', 'saw the two men', 'made him sad'),
  )
  .map((parts) => `${parts.join('').replace(/(ferry|Bram|they|one|he|fog|boats)(?=[a-z])/g, '$1 ')}.`)
  .map((text) => text.charAt(0).toUpperCase() + text.slice(1));
const options = { seed: 20261130, numRuns: 3000 };
const longest = fc.constantFrom(undefined, 4, 8);

test('any text can be passed to the shortener without an error', () => {
  fc.assert(
    fc.property(fc.oneof(fc.string({ unit: 'grapheme' }), sentence), longest, (text, most) => {
      shortener.shorten(text, { measure, ...(most && { longest: most }) });
    }),
    options,
  );
});

test('a shorter sentence keeps all names, numbers and negations, and has fewer letters if it is not split', () => {
  let shorter = 0;
  fc.assert(
    fc.property(sentence, (text) => {
      const found = shortener.shorten(text, { measure });
      if (!found) return;
      shorter++;
      expect(found.text.length).toBeLessThan(text.length);
      for (const fact of [
        /\bnot\b/g,
        /\bnever\b/g,
        /\bhardly\b/g,
        /\bno\b/g,
        /\btwo\b/gi,
        /\bnine\b/g,
        /\$5\.50/g,
        /1912/g,
      ])
        expect(found.text.match(fact)?.length ?? 0, text).toBe(text.match(fact)?.length ?? 0);
      for (const name of ['Bram', 'Wilma', 'Falk'])
        expect(found.text.includes(name)).toBe(text.includes(name));
    }),
    options,
  );
  expect(shorter).toBeGreaterThan(300);
});

test('a shortened sentence cannot be shortened again', () => {
  fc.assert(
    fc.property(sentence, longest, (text, most) => {
      const asked = { measure, ...(most && { longest: most }) };
      const found = shortener.shorten(text, asked);
      if (!found || found.steps.some(({ rule }) => SPLIT_RULES.some(({ name }) => name === rule))) return;
      expect(shortener.shorten(found.text, asked), found.text).toBeNull();
    }),
    options,
  );
});

test('each part of a split sentence is a whole sentence', () => {
  let parted = 0;
  fc.assert(
    fc.property(double, (text) => {
      const found = shortener.shorten(text, {
        measure: (part) => ({ ...measure(part), beyond: 1 }),
        longest: 4,
      });
      if (!found?.steps.some(({ rule }) => SPLIT_RULES.some(({ name }) => name === rule))) return;
      parted++;
      const cut = findSentences(found.text).map(({ start, end }) => found.text.slice(start, end).trim());
      for (const one of cut) expect(one).toMatch(/^\P{Ll}.*\.$/u);
    }),
    options,
  );
  expect(parted).toBeGreaterThan(100);
});

test('every rule has a name of its own', () => {
  const names = [...DROP_RULES, ...SPLIT_RULES].map(({ name }) => name);
  expect(new Set(names).size).toBe(names.length);
});
