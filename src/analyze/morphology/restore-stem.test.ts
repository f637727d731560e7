import { expect, test } from 'vitest';
import { restoreStem } from './restore-stem.ts';

const stems = (word: string, suffix: string) =>
  restoreStem(word, suffix).map(({ stem, change }) => `${stem} ${change}`);

test('one consonant before -ing means a dropped e, and a double consonant may come from doubling', () => {
  expect(stems('hoping', 'ing')).toEqual(['hope drop-e']);
  expect(stems('hopping', 'ing')).toEqual(['hoppe drop-e', 'hopp none', 'hop double']);
});

test('a base is found in spellings that break the rules', () => {
  expect(stems('likeable', 'able')).toContain('like none');
  expect(stems('argument', 'ment')).toContain('argue drop-e');
  expect(stems('travelled', 'ed')).toContain('travel double');
  expect(stems('focused', 'ed')).toContain('focus none');
  expect(stems('quizzes', 'es')).toContain('quiz double');
});

test('a base has a vowel, and no word is its own base', () => {
  expect(stems('sing', 'ing')).toEqual([]);
  expect(stems('string', 'ing')).toEqual([]);
  expect(stems('hoping', 'ed')).toEqual([]);
});
