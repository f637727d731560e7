import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { lateFrames } from './late-frames.ts';
import { irregularPlurals, nounKinds, onlyThe, ownAdjectives } from './nouns.ts';
import { plainFrames } from './plain-frames.ts';
import { subjectClasses, verbFrames } from './verb-frames.ts';
import { phraseClasses, pluralOf, wordClasses } from './vocabulary.ts';

test.each([
  ['hat', 'hats'],
  ['box', 'boxes'],
  ['bench', 'benches'],
  ['pony', 'ponies'],
  ['toy', 'toys'],
  ['mouse', 'mice'],
  ['quiz', 'quizzes'],
])('the plural of %s is %s', (one, many) => {
  expect(pluralOf(one)).toBe(many);
});

test('each verb has four forms, and no two classes have the same name', () => {
  const lines = Object.values(verbFrames)
    .flatMap((lines) => lines.split('\n'))
    .map((line) => line.trim())
    .filter((line) => line !== '');
  expect(lines.length).toBeGreaterThan(200);
  // A form may have two spellings, British and American: spelt|spelled.
  const form = '(?:[a-z]+(?:\\|[a-z]+)?|-)';
  const whole = new RegExp(`^${form} ${form} ${form} ${form} \\| [a-z{]`);
  for (const line of lines) expect(line).toMatch(whole);
  expect(Object.keys(wordClasses).filter((name) => name in phraseClasses)).toEqual([]);
});

test('each slot names a class or a word that exists', () => {
  const kinds = new Set(Object.values(nounKinds).flatMap(({ nouns }) => nouns.split(' ')));
  const named = new Set(
    [...Object.values(wordClasses), ...Object.values(subjectClasses)].flatMap((words) => words.split(' ')),
  );
  const slots = [...Object.values(verbFrames), ...plainFrames, ...lateFrames].flatMap((text) => [
    ...text.matchAll(/\{(?:S )?(?:(?:an?|the|one|bare|my) )?=?([^}]*)\}/g),
  ]);
  const strange = slots
    .map(([, of]) => of!)
    .filter((of) => !(of in wordClasses) && !(of in subjectClasses) && !(of in phraseClasses))
    .filter((of) => !kinds.has(of) && !named.has(of) && !onlyThe.has(of) && !/^(?:people|person)$/.test(of));
  expect(strange).toEqual([]);
});

test('the sentence lists use no word that is kept off lesson sheets', () => {
  const path = new URL('../../data/source/not-in-lessons.txt', import.meta.url);
  const kept = new Set(
    readFileSync(path, 'utf8')
      .split('\n')
      .filter((line) => !line.startsWith('#'))
      .flatMap((line) => line.split(/\s+/))
      .filter((word) => word.length > 1),
  );
  expect(kept.size).toBeGreaterThan(100);
  const grammar = JSON.stringify([
    verbFrames,
    plainFrames,
    lateFrames,
    wordClasses,
    phraseClasses,
    nounKinds,
    ownAdjectives,
    irregularPlurals,
  ]);
  expect(
    (grammar.replace(/\\n/g, ' ').match(/[a-z'-]+/gi) ?? []).filter((word) => kept.has(word.toLowerCase())),
  ).toEqual([]);
});
