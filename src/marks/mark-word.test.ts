import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadAnalyzer } from '../../tests/load-analyzer.ts';
import { markedText, markWord } from './mark-word.ts';

const analyzer = loadAnalyzer();

/** Returns a marked word as one string, with affixes in angle brackets. */
function mark(shown: string): string {
  return markWord(shown, analyzer.analyze(shown).readings[0]!)
    .map(({ text, affix }) => (affix ? `<${text}>` : text))
    .join('');
}

describe('dictionary marks', () => {
  // A macron for a vowel that is pronounced like its name, a breve for a short vowel, and dots between syllables:
  // common practice, no source.
  test.each([
    ['hat', 'hăt'],
    ['rain', 'rāin'],
    ['tree', 'trēe'],
    ['light', 'līght'],
    ['hope', 'hōpe'],
    ['hoping', 'hōp·<ĭng>'],
    ['running', 'rŭn·n<ĭng>'],
    ['lighthouse', 'līght·house'],
    ['safely', 'sāfe·<ly>'],
    ['head', 'hĕad'],
    ['gym', 'gy̆m'],
    ['shy', 'shȳ'],
    ['unhappy', '<ŭn·>hăp·py'],
    ['cute', 'cūte'],
  ])('the word %s is marked as in a dictionary', (word, marked) => {
    expect(mark(word)).toBe(marked);
  });

  test.each([
    ['car', 'car', 'a vowel that r changes'],
    ['said', 'said', 'a letter with the sound of another'],
    ['you', 'you', 'the u of ou is not named'],
    ['boy', 'boy', 'a vowel sound that no letter is named for'],
  ])('%s stays %s: %s', (word, marked) => {
    expect(mark(word)).toBe(marked);
  });

  test('capital letters stay as they are written', () => {
    expect(mark('Harbour')).toBe('Har·bour');
    expect(mark('Ines')).toMatch(/^Ĭn/);
  });

  test('a word that its units do not spell gets only dots between its syllables', () => {
    const reading = { ...analyzer.analyze('hoping').readings[0]!, units: [] };
    expect(markWord('hoping', reading)).toEqual([{ text: 'hop·ing', affix: false }]);
    expect(markWord('odd', reading)).toEqual([{ text: 'odd', affix: false }]);
  });
});

test('removing the marks from a word gives its original spelling', () => {
  const words = fc.oneof(
    fc.constantFrom('marigold', 'ferries', "Wilma's", "don't", 'bases', 'castle', 'ropeway', 'naïve', 'eyed'),
    fc.stringMatching(/^[a-z']{1,9}(ing|ed|s|er|ly|e)?$/),
  );
  fc.assert(
    fc.property(words, (word) => {
      for (const reading of analyzer.analyze(word).readings) {
        const parts = markWord(word.normalize('NFC'), reading);
        const plain = parts
          .map(({ text }) => text)
          .join('')
          .replaceAll('·', '');
        expect(stripMarks(plain)).toBe(stripMarks(word));
      }
    }),
    { seed: 41, numRuns: 400 },
  );
});

function stripMarks(text: string): string {
  return text
    .normalize('NFD')
    .replace(/[\u0304\u0306]/g, '')
    .normalize('NFC');
}

test.each([
  ['blows', 'blōw\u2009s'],
  ['maker', 'māk·er'],
  ['arrival', 'ar·rī·val'],
  ['running', 'rŭn·nĭng'],
  ['submarine', 'sŭb·ma·rine'],
])('the marked text of %s has a thin space only before an ending that is no syllable', (word, marked) => {
  expect(markedText(word, analyzer.analyze(word).readings[0]!)).toBe(marked);
});
