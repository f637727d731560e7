import { expect, test } from 'vitest';
import { readWordnet } from './read-wordnet.ts';

const { lemmas, related, glosses, names } = readWordnet();

test('a base form has its parts of speech', () => {
  expect([...lemmas.get('happy')!]).toEqual(['a']);
  expect([...lemmas.get('light')!].sort()).toEqual(['a', 'n', 'r', 'v']);
  expect(lemmas.has('ice_cream')).toBe(false);
});

test('related words are linked in both directions', () => {
  expect(related.get('happy')).toContain('happiness');
  expect(related.get('happiness')).toContain('happy');
  expect(related.get('happily')).toContain('happy');
  expect(related.get('corner')?.has('corn') ?? false).toBe(false);
});

test('definitions come without example sentences', () => {
  expect(glosses.get('pancake')).toContain('cake');
  expect(glosses.get('pancake')).not.toContain('"');
});

test('names are distinguished from ordinary words that are also names', () => {
  expect(names.has('wales')).toBe(true);
  expect(names.has('turkey')).toBe(false);
});
