import 'fake-indexeddb/auto';
import { beforeEach, expect, test, vi } from 'vitest';
import type { Passage } from '../../passage/kept/passage.ts';
import { deletePassage, loadPassage, loadPassages, savePassage } from './passages-store.ts';

vi.mock('../browser.ts', () => ({ browser: {} }));

const ferry: Passage = {
  id: 'ferry',
  title: 'The ferry is late',
  source: { url: null, byline: null, date: null },
  original: 'The ferry is late.',
  versions: {},
  rev: 0,
  saved: 0,
};

beforeEach(async () => {
  for (const { id } of await loadPassages()) await deletePassage(id);
});

test('a passage that is saved again stays a single passage', async () => {
  const { passage } = await savePassage(ferry);
  const again = await savePassage({ ...passage, original: 'The ferry is in.' });
  expect(again.outcome).toBe('kept');
  expect(await loadPassages()).toEqual([again.passage]);
});

test('a passage that another window saved meanwhile is kept beside this window’s passage', async () => {
  const { passage } = await savePassage(ferry);
  const theirs = await savePassage({ ...passage, original: 'Theirs.' });
  const ours = await savePassage({ ...passage, original: 'Ours.' });
  expect(ours.outcome).toBe('parted');
  expect(ours.passage.id).not.toBe('ferry');
  expect(await loadPassage('ferry')).toEqual(theirs.passage);
  expect((await loadPassages()).map(({ original }) => original).toSorted()).toEqual(['Ours.', 'Theirs.']);
});
