import { expect, test } from 'vitest';
import { importSequence } from '../../analyze/index.ts';
import { fromPasted, pastedTitle } from './from-pasted.ts';

test.each([
  ['Week 3', 'Week 3'],
  ['3', 'Step 3'],
  ['Unit 1 · 3b', 'Unit 1 · Step 3b'],
  ['8 · Short i', 'Short i'],
  ['Step 8 · Short i', 'Short i'],
  ['9 · Short i', 'Step 9 · Short i'],
  ['Lesson 8 · Short i', 'Lesson 8 · Short i'],
  [' ', 'Step 8'],
])('a step pasted as “%s” is called %s', (title, called) => {
  expect(pastedTitle({ title, items: [] }, 7)).toBe(called);
});

test('a pasted list gives its lines as titles, and pieces that are not understood go into its note', () => {
  const { steps, note } = fromPasted(importSequence('1. sh, ch\n2. sounds of the harbour\n3. ai'), 'Ours');
  expect(steps.map(({ title }) => title)).toEqual(['sh, ch', 'sounds of the harbour', 'ai']);
  expect(note).toBe('Not understood when pasted: “sounds of the harbour” (step 2).');
});
