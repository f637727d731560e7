import { expect, test } from 'vitest';
import { createPicker } from './picker.ts';

const words = 'gull kelp mast dock rope sail tern buoy net crab'.split(' ');

test('the same seed and name give the same choice, and another seed or name gives another', () => {
  const picked = createPicker(7, 'lists').pick(words, 10);
  expect(createPicker(7, 'lists').pick(words, 10)).toEqual(picked);
  expect(createPicker(8, 'lists').pick(words, 10)).not.toEqual(picked);
  expect(createPicker(7, 'dictation').pick(words, 10)).not.toEqual(picked);
});

test('shuffling three words gives all six orders', () => {
  const orders = Array.from({ length: 100 }, (_, seed) =>
    createPicker(seed).shuffle(words.slice(0, 3)).join(),
  );
  expect(new Set(orders).size).toBe(6);
});

test('each item is picked at most once', () => {
  expect(createPicker(1).pick(words, 99).toSorted()).toEqual(words.toSorted());
  expect(new Set(createPicker(1).pickEarly(words, 6)).size).toBe(6);
});

test('items early in the list are picked more often', () => {
  const counts = new Map(words.map((word) => [word, 0]));
  for (let seed = 0; seed < 400; seed++) {
    const picked = createPicker(seed).pickEarly(words, 3);
    expect(picked).toEqual(words.filter((word) => picked.includes(word)));
    for (const word of picked) counts.set(word, counts.get(word)! + 1);
  }
  expect(counts.get('gull')).toBeGreaterThan(counts.get('crab')! * 1.5);
  expect(counts.get('crab')).toBeGreaterThan(20);
});
