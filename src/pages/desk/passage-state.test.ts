import { expect, test, vi } from 'vitest';
import type { Groups } from '../../host/store/groups-store.ts';
import type { Passage } from '../../passage/kept/passage.ts';
import { versionFor } from '../../passage/versions.ts';
import {
  addStoryWords,
  createPlaceCounter,
  findPair,
  isBeside,
  listBeside,
  needsVersions,
  openFor,
  setStoryWords,
  storyWordOf,
  writeText,
} from './passage-state.ts';

vi.mock('../../host/browser.ts', () => ({ browser: {} }));

const passage: Passage = {
  id: 'ferry',
  title: 'The ferry',
  source: { url: null, byline: 'Ines', date: null },
  original: 'The ferry left the quay.',
  versions: {
    herons: { text: 'The boat left.', storyWords: [] },
    gone: { text: 'The ship left.', storyWords: [] },
  },
  rev: 1,
  saved: 0,
};
const groups = {
  groups: { herons: { name: 'Herons' }, plovers: { name: 'Plovers' } },
} as unknown as Groups;
const quay = { word: 'quay', meaning: 'where ships land' };

test.each([
  ['', false, false],
  ['herons', false, false],
  ['plovers', false, true],
  ['as-found', false, true],
  ['', true, false],
] as const)(
  'a pair is shown and figures are needed as expected for the Herons with “%s” beside (table open: %s)',
  (beside, isCounting, isPair) => {
    const state = { ...openFor('herons'), beside, isCounting };
    expect(isBeside(state)).toBe(isPair);
    expect(needsVersions(state)).toBe(isPair || isCounting);
  },
);

test('only versions of other groups that still exist can be shown beside', () => {
  expect(listBeside(groups, passage, 'plovers')).toEqual([{ id: 'herons', name: 'Herons' }]);
  expect(listBeside(groups, passage, 'herons')).toEqual([]);
});

test('two versions are shown side by side once both have their figures', () => {
  const [found, herons] = [{ id: 'as-found' }, { id: 'herons' }];
  const state = { ...openFor('herons'), beside: 'as-found' };
  expect(findPair([herons], state)).toBeNull();
  expect(findPair([found, herons], state)).toEqual({ from: found, to: herons });
});

test('a change for one group leaves the original text and the other versions unchanged', () => {
  const written = writeText(passage, 'plovers', 'The ferry left.');
  expect(versionFor(written, 'plovers').text).toBe('The ferry left.');
  expect(written.original).toBe(passage.original);
  expect(written.versions).toMatchObject(passage.versions);
});

test('story words are added after the existing words of a version, and can be replaced as a whole', () => {
  const tide = { word: 'tide', meaning: '', kind: 'story-word', places: [1] };
  const added = addStoryWords(setStoryWords(passage, 'herons', [quay]), 'herons', [tide]);
  expect(versionFor(added, 'herons')).toEqual({
    text: 'The boat left.',
    storyWords: [quay, { word: 'tide', meaning: '' }],
  });
  expect(versionFor(setStoryWords(added, 'herons', []), 'herons').storyWords).toEqual([]);
});

test('a story word is kept in lower case and without its reading', () => {
  expect(['Quay', 'Quay^', 'Quay+', 'lead#1'].map(storyWordOf)).toEqual(['quay', 'quay', 'quay', 'lead']);
});

test('pressing a word again goes to its next place, and each word has its own count', () => {
  const next = createPlaceCounter();
  expect(['tide', 'quay', 'tide', 'constructor', 'tide'].map(next)).toEqual([0, 0, 1, 0, 2]);
});
