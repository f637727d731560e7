import { describe, expect, test } from 'vitest';
import { createPicker } from '../../src/lesson/index.ts';
import { composeSentences } from '../../src/lesson/sentences/index.ts';
import { createVocabulary } from '../../src/lesson/sentences/vocabulary.ts';
import { lessonInput, sequences } from './load-lesson.ts';

/** The smallest number of readable words for which sentences must be composed. */
const ENOUGH_WORDS = 60;

function compose(
  input: ReturnType<typeof lessonInput>,
  seed: number,
  count = 20,
  longest?: number,
): string[] {
  const { known, group, focus } = input;
  const wish = { names: group.names, focus, count, ...(longest === undefined ? {} : { longest }) };
  return composeSentences(known, wish, createPicker(seed, 'sentences'));
}

const wordsOf = (sentence: string): string[] => sentence.replace(/[.?]/g, '').split(' ');

describe.each(sequences)('$id', ({ id, steps }) => {
  test('a group with enough words gets twenty readable, well-made sentences', {
    timeout: 120_000,
  }, () => {
    // The test uses the first steps, where few sentences are possible, and some later steps. dictation.test.ts uses all
    // steps.
    for (let step = 1; step <= steps.length; step += step < 12 ? 1 : 6) {
      const input = lessonInput(id, step);
      const sentences = compose(input, step);
      if (input.known.words.length >= ENOUGH_WORDS) expect(sentences.length, `step ${step}`).toBe(20);
      expect(new Set(sentences).size).toBe(sentences.length);
      for (const sentence of sentences) {
        expect(input.known.reads(sentence), `step ${step}: ${sentence}`).toBe(true);
        expect(sentence).toMatch(/^[A-Z][A-Za-z' -]* [a-z' -]*[A-Za-z'-]+[.?]$/);
        expect(wordsOf(sentence).length).toBeGreaterThanOrEqual(4);
        expect(wordsOf(sentence).length).toBeLessThanOrEqual(10);
        // The articles must fit the first sound of the next word, which may be a vowel or the sound of y or w.
        expect(sentence).not.toMatch(
          /\ba (?!eu|one\b)[aeio]|\ban (?!hour|honest|heir)[^aeiou]|\b(\w+) \1\b/i,
        );
      }
    }
  });
});

test('most sentences practise the patterns of the lesson', () => {
  const shares = [8, 14, 20, 24, 30, 36, 45].map((step) => {
    const input = lessonInput('steady-steps', step);
    const sentences = compose(input, 1);
    const practise = sentences.filter((sentence) =>
      wordsOf(sentence).some((word) =>
        input.known.find(word)?.reading.requires.some((each) => input.focus.includes(each)),
      ),
    );
    return practise.length / sentences.length;
  });
  for (const share of shares) expect(share).toBeGreaterThan(0.8);
});

test.each([24, 36, 48])('at step %i handwritten sentences come before composed sentences', (step) => {
  const input = lessonInput('steady-steps', step);
  const vocabulary = createVocabulary(input.known, input.focus);
  const [count, longest] = [10, 6];
  const practise = vocabulary.written().filter((sentence) => {
    const words = wordsOf(sentence);
    return words.length >= 4 && words.length <= longest && vocabulary.practises(words.join(' '));
  });
  const taken = compose(input, 1, count, longest);
  expect(practise.length).toBeGreaterThan(2);
  expect(taken).toHaveLength(count);
  expect(taken.filter((sentence) => practise.includes(sentence))).toHaveLength(
    Math.min(count, practise.length),
  );
});

test('a lesson on contractions has sentences with contractions', () => {
  const sentences = compose(lessonInput('steady-steps', 42), 1);
  expect(sentences.filter((sentence) => /'(?:t|m|re|ll|s)\b/.test(sentence)).length).toBeGreaterThan(14);
});

test('sentences are no longer than wanted, and the same for the same seed', () => {
  const input = lessonInput('england-2013', 30);
  const short = compose(input, 2, 10, 5);
  expect(short).toHaveLength(10);
  for (const sentence of short) expect(wordsOf(sentence).length).toBeLessThanOrEqual(5);
  expect(compose(input, 2, 10, 5)).toEqual(short);
  expect(compose(input, 3, 10, 5)).not.toEqual(short);
});

test('verbs agree with their subjects', () => {
  const many = [12, 20, 28, 36, 44, 52].flatMap((step) =>
    compose(lessonInput('steady-steps', step), step, 60),
  );
  const text = many.join('\n');
  expect(many.length).toBeGreaterThan(300);
  expect(text).not.toMatch(/^(?:He|She|It|Bram|Ines|Otto|Wilma) (?:are|were|have|am|want|like)\b/m);
  expect(text).not.toMatch(/^(?:We|They|You) (?:is|was|has|am|wants|likes)\b/m);
  expect(text).not.toMatch(/^I (?:is|are|were|has|wants|likes)\b/m);
  expect(text).not.toMatch(/\b(?:can|will|did|to) (?:sat|ran|went|was|is|had)\b/);
});
