import { expect, test, vi } from 'vitest';
import { groupOf } from '../../../tests/fakes/group.ts';
import type { Fit } from '../../analyze/index.ts';
import { moveGroup } from '../../host/store/move-group.ts';
import type { SeenSteps } from '../../host/store/shelf-seen.ts';
import { findNews } from './find-news.ts';
import type { IndexedText } from './shelf-index.ts';

vi.mock('../../host/browser.ts', () => ({ browser: {} }));

const noon = (day: string) => new Date(`${day}T12:00`).getTime();
const text = (title: string, shelved: string) =>
  ({ title, shelved: noon(shelved) }) as unknown as IndexedText;
const now = (step: number, reach = 96): Fit => ({ reach, running: 100, opened: 0, now: true, step });
const later: Fit = { reach: 60, running: 100, opened: 0, now: false, step: 40 };

const at10 = groupOf({
  sequence: 'steady-steps',
  step: 10,
  history: [{ date: '2026-09-01', sequence: 'steady-steps', step: 10 }],
});
const at12 = moveGroup(at10, { step: 12 }, '2026-11-25');

function newsOf(rows: readonly (readonly [IndexedText, Fit])[], group: typeof at12, seen: SeenSteps) {
  const found = findNews(
    rows.map(([one]) => one),
    { herons: group },
    seen,
    () => rows.map(([, fit]) => fit),
  );
  return found.map(({ id, texts }) => [id, texts.map(({ title }) => title)]);
}

const seenAt = (step: number): SeenSteps => ({ herons: { sequence: 'steady-steps', step } });
const rows = [
  [text('read before', '2026-10-01'), now(9)],
  [text('came at 11', '2026-10-01'), now(11)],
  [text('came at 12, reaches higher', '2026-10-01'), now(12, 98)],
  [text('still beyond', '2026-10-01'), later],
  [text('shelved the day of the move', '2026-11-25'), now(12, 95)],
  [text('shelved after the move', '2026-11-26'), now(12)],
] as const;

test('the news lists the texts that became readable since the last seen step, highest reach first', () => {
  expect(newsOf(rows, at12, seenAt(10))).toEqual([
    ['herons', ['came at 12, reaches higher', 'came at 11', 'shelved the day of the move']],
  ]);
  expect(newsOf(rows, at12, seenAt(11))).toEqual([
    ['herons', ['came at 12, reaches higher', 'shelved the day of the move']],
  ]);
});

test('there is no news if the group was never seen, did not move, went back or changed its sequence', () => {
  for (const seen of [{}, seenAt(12), seenAt(14), { herons: { sequence: 'second-tide', step: 2 } }])
    expect(newsOf(rows, at12, seen)).toEqual([]);
});

test('a move that made no text readable gives empty news, so that the move can be noted', () => {
  expect(newsOf([rows[0], rows[3]], at12, seenAt(10))).toEqual([['herons', []]]);
});
