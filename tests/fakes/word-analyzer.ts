import { splitKey } from '../../src/analyze/homographs/word-key.ts';
import type { WordAnalyzer } from '../../src/analyze/standing/judge.ts';
import type { Reading, Usage, WordAnalysis } from '../../src/analyze/types.ts';

/** The fields of a reading that a test sets. All other fields are empty, and the source is the dictionary. */
export type FakeReading = Partial<Reading> & Pick<Reading, 'requires'>;

/** Returns an analyzer that knows only the given words, by lower-case key. Other words have no reading. */
export function fakeAnalyzer(
  words: Readonly<Record<string, readonly FakeReading[]>>,
  homographs: readonly string[] = [],
  usages: Readonly<Record<string, Usage>> = {},
): WordAnalyzer {
  const known = new Map(Object.entries(words));
  return {
    analyze(key): WordAnalysis {
      const word = splitKey(key).word.toLowerCase();
      const readings = (known.get(word) ?? []).map((reading) => ({ ...blank, ...reading }));
      return {
        word,
        readings,
        homograph: homographs.includes(word),
        usage: usages[word] ?? null,
      };
    },
  };
}

const blank: Reading = {
  pronunciation: '',
  source: 'dictionary',
  units: [],
  base: null,
  affixes: [],
  syllables: [],
  requires: [],
};
