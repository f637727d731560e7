import { beforeEach, expect, test, vi } from 'vitest';
import type { Passage } from '../../passage/kept/passage.ts';
import { dropDraft, findDraft, keepDraft } from './draft.ts';

vi.mock('../../host/browser.ts', () => ({ browser: {} }));

const kept = new Map<string, string>();
vi.stubGlobal('localStorage', {
  getItem: (key: string) => kept.get(key) ?? null,
  setItem: (key: string, value: string) => kept.set(key, value),
  removeItem: (key: string) => kept.delete(key),
});
beforeEach(() => kept.clear());

const passage: Passage = {
  id: 'tide',
  title: 'The tide',
  source: { url: null, byline: 'Ines', date: null },
  original: 'The tide was out.',
  versions: {
    herons: {
      text: 'The tide is out.',
      storyWords: [{ word: 'tide', meaning: 'the sea as it comes and goes' }],
    },
  },
  rev: 3,
  saved: 17,
};

test('a draft is returned unchanged until it is dropped', () => {
  keepDraft(passage);
  expect(findDraft('tide')).toEqual(passage);
  expect(findDraft('gull')).toBeNull();
  dropDraft('tide');
  expect(findDraft('tide')).toBeNull();
});

test.each([
  ['no JSON', '{"title"'],
  ['nothing', 'null'],
  ['a list', '[]'],
  ['a passage without versions', JSON.stringify({ ...passage, versions: 7 })],
  ['a passage that was never saved', JSON.stringify({ ...passage, rev: 'later' })],
])('%s is not accepted as a draft, so the saved passage is shown', (_, stored) => {
  kept.set('draft tide', stored);
  expect(findDraft('tide')).toBeNull();
});
