import { afterEach, expect, test } from 'vitest';
import { patternNames } from '../analyze/index.ts';
import { spanish } from '../wording/es.ts';
import { listMessages } from '../wording/list-messages.ts';
import { sayFrom } from '../wording/say.ts';
import { speakEnglish } from '../wording/speak-english.ts';
import { patternName } from './pattern-name.ts';

afterEach(speakEnglish);

test('in English a pattern has its name from the catalogue', () => {
  const other = patternNames.filter(({ id, label }) => patternName(id) !== label);
  expect(other.map(({ id }) => id)).toEqual([]);
});

test('in Spanish no English word is left in a pattern’s name', () => {
  sayFrom(listMessages('es', spanish));
  const english = /\b(?:as in|suffix|prefix|silent|weak|word|words|syllables?|spelling|start|end|the)\b/;
  const left = patternNames.map(({ id }) => patternName(id)).filter((name) => english.test(name));
  expect(left).toEqual([]);
  expect(patternName('suffix-ed-id')).toBe('sufijo -ed como /id/');
});

test('a pattern from a later version is named by its id', () => {
  expect(patternName('later')).toBe('later');
});
