import { expect, test } from 'vitest';
import { setVersion, versionFor } from './versions.ts';

const passage = {
  id: 'one',
  title: 'Nets',
  source: { url: null, byline: null, date: null },
  original: 'A net.',
  versions: {},
  rev: 0,
  saved: 0,
};

test('a group without a version reads the original text, with the same story words each time', () => {
  expect(versionFor(passage, 'herons')).toEqual({ text: 'A net.', storyWords: [] });
  expect(versionFor(passage, 'herons').storyWords).toBe(versionFor(passage, 'herons').storyWords);
  expect(versionFor(passage, 'constructor').text).toBe('A net.');
});

test('changing the version of one group leaves all other groups unchanged', () => {
  const changed = setVersion(passage, 'herons', (version) => ({ ...version, text: 'A big net.' }));
  expect(versionFor(changed, 'herons').text).toBe('A big net.');
  expect(versionFor(changed, 'plovers').text).toBe('A net.');
  expect(passage.versions).toEqual({});
});
