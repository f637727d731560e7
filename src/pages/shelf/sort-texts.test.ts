import { expect, test } from 'vitest';
import type { Fit } from '../../analyze/index.ts';
import type { IndexedText } from './shelf-index.ts';
import { bandOf, isWanted, listTags, type RankedText, sortTexts } from './sort-texts.ts';

function textOf(given: Partial<IndexedText>): IndexedText {
  return {
    id: given.title ?? '',
    title: '',
    url: null,
    byline: null,
    date: null,
    shelved: 0,
    tags: [],
    notes: '',
    skipped: 0,
    isKept: false,
    words: new Uint32Array(),
    searched: '',
    ...given,
  };
}

const row = (title: string, fit: Partial<Fit>, shelved = 0): RankedText => ({
  text: textOf({ title, shelved }),
  fit: { reach: 0, running: 100, opened: 0, now: false, step: null, ...fit },
});

const rows = [
  row('never high', { reach: 80 }, 9),
  row('never low', { reach: 20 }),
  row('soon', { step: 12, reach: 85 }),
  row('sooner', { step: 11, reach: 70 }),
  row('now', { now: true, step: 2, reach: 96, opened: 5 }),
  row('now best', { now: true, step: 9, reach: 99 }),
  row('now best, newer', { now: true, step: 9, reach: 99 }, 5),
];
const titles = (sorted: readonly RankedText[]) => sorted.map(({ text }) => text.title);

test('texts that practise the step come first, then other readable texts, then those that are readable soonest', () => {
  expect(titles(sortTexts(rows, 'fit'))).toEqual([
    'now',
    'now best, newer',
    'now best',
    'sooner',
    'soon',
    'never high',
    'never low',
  ]);
});

test('texts can also be sorted by practice, by date and by title', () => {
  expect(titles(sortTexts(rows, 'practice'))[0]).toBe('now');
  expect(titles(sortTexts(rows, 'newest')).slice(0, 2)).toEqual(['never high', 'now best, newer']);
  expect(titles(sortTexts(rows, 'title'))[0]).toBe('never high');
});

test('texts are grouped into ready now, soon and later', () => {
  const band = (fit: Partial<Fit>, at: number) => bandOf(row('', fit).fit, at);
  expect(band({ now: true, step: 1 }, 20)).toBe('now');
  expect(band({ step: 15 }, 10)).toBe('soon');
  expect(band({ step: 16 }, 10)).toBe('later');
  expect(band({ step: null }, 10)).toBe('later');
});

test('a search finds texts whose details contain each of its words, and ignores the case of tags', () => {
  const text = textOf({ tags: ['Harbour'], searched: 'the ferry is late\nharbour\nfor week 12' });
  expect(isWanted(text, { search: ' Ferry  week', tag: null })).toBe(true);
  expect(isWanted(text, { search: 'ferry gull', tag: null })).toBe(false);
  expect(isWanted(text, { search: '', tag: 'harbour' })).toBe(true);
  expect(isWanted(text, { search: '', tag: 'boats' })).toBe(false);
});

test('each tag is listed once, regardless of case, with its number of texts', () => {
  const texts = [['week 12', 'Harbour'], ['harbour'], ['week 9']].map((tags) => textOf({ tags }));
  expect(listTags(texts)).toEqual([
    { tag: 'Harbour', count: 2 },
    { tag: 'week 9', count: 1 },
    { tag: 'week 12', count: 1 },
  ]);
});
