import { describe, expect, test } from 'vitest';
import { parseGroup, parseSequence } from '../../analyze/index.ts';
import type { ImportChoices } from '../../host/store/import-choices.ts';
import {
  choiceOf,
  findTrouble,
  importWithChoices,
  lastTaughtOf,
  nameOf,
  proposeStep,
  readPastedText,
  sayColumn,
  settle,
} from './paste-state.ts';

const LIST = 'Tarn Quay sequence\nWeek 1: m, s\nWeek 2: sounds of the harbour';
const TABLE = 'Week\tSounds\tNotes\n1\tm, s\tat\n2\tsh\tfish';

describe('a pasted text', () => {
  test.each([
    ['', null],
    [' \n', null],
    [LIST, null],
    ['?!', 'noSteps'],
    ['a'.repeat(200_001), 'tooLong'],
  ] as const)('that begins with “%.10s” has the trouble %s', (text, trouble) => {
    expect(findTrouble(text, readPastedText(text, null, undefined))).toBe(trouble);
  });

  test('with one character too many is not read at all', () => {
    const { unaided, table, text } = readPastedText(LIST.padEnd(200_001), null, undefined);
    expect([unaided.steps, table, text]).toEqual([[], null, '']);
    expect(readPastedText(LIST.padEnd(200_000), null, undefined).unaided.steps).toHaveLength(2);
  });
});

describe('the choice for a column', () => {
  const read = readPastedText(TABLE, null, undefined);
  const said = sayColumn(read, 2, 'by-sight');

  test('changes only that column', () => {
    const { columns, unaided } = readPastedText(TABLE, said, undefined);
    expect(columns).toEqual(read.columns.with(2, 'by-sight'));
    expect(unaided.steps.flatMap(({ items }) => items.flatMap(({ bySight }) => bySight))).toEqual([
      'at',
      'fish',
    ]);
  });

  test('is kept while rows are added, and is dropped when the table has other column heads', () => {
    expect(readPastedText(`${TABLE}\n3\tai\train`, said, undefined).columns[2]).toBe('by-sight');
    const other = TABLE.replace('Notes', 'Remarks');
    expect(readPastedText(other, said, undefined).columns).toEqual(
      readPastedText(other, null, undefined).columns,
    );
  });
});

describe('a choice', () => {
  const read = readPastedText(LIST, null, undefined);
  const [{ key } = { key: '' }] = read.toSettle;
  const statusOf = (choices: ImportChoices) =>
    importWithChoices(read, choices).steps[1]!.items.map(({ status }) => status);

  test('settles a piece, and the piece is as before when the choice is withdrawn', () => {
    const settled = settle({}, key, 'ignore');
    expect(statusOf(settled)).toEqual(['ignored']);
    expect(statusOf(settle(settled, key, null))).toEqual(['unknown']);
    expect(choiceOf(settled, key)).toBe('ignore');
  });

  test('leaves other choices alone, and a key such as “constructor” has no choice', () => {
    expect(settle({ ai: 'by-sight' }, key, 'ignore')).toEqual({ ai: 'by-sight', [key]: 'ignore' });
    expect(choiceOf({}, 'constructor')).toBeUndefined();
  });
});

test.each([
  ['Ours', 'Tarn Quay', 'Ours'],
  [null, 'Tarn Quay', 'Tarn Quay'],
  [null, ' ', 'Our sequence'],
  ['', 'Tarn Quay', ''],
])('with “%s” typed as the name, a text titled “%s” gives a sequence called “%s”', (typed, title, name) => {
  expect(nameOf({ title, steps: [] }, typed)).toBe(name);
});

test('the last step taught is never beyond the last step of the text', () => {
  const { unaided } = readPastedText(LIST, null, undefined);
  expect([1, 2, 9].map((step) => lastTaughtOf(unaided, step))).toEqual([1, 2, 2]);
  expect(lastTaughtOf({ title: '', steps: [] }, 4)).toBe(1);
});

describe('the step that is proposed for a group', () => {
  const { unaided } = readPastedText(
    'Week 1: m, s\nWeek 2: t, p\nWeek 3: sh, ch\nWeek 4: ai',
    null,
    undefined,
  );
  const sequence = parseSequence({
    id: 'own',
    name: 'Own',
    source: 'Made for this test.',
    licence: 'None',
    steps: [
      { title: 'One', teaches: ['t', 'm'], bySight: [] },
      { title: 'Two', teaches: ['s', 'p', 'sh'], bySight: [] },
      { title: 'Three', teaches: ['ch', 'ai'], bySight: [] },
    ],
  });
  const at = (step: number, more: object = {}): number =>
    proposeStep(unaided, parseGroup({ name: 'Herons', sequence: 'own', step, ...more }), sequence);

  test('is the step up to which the most patterns were taught and the fewest were not', () => {
    expect([at(0), at(2), at(3)]).toEqual([1, 2, 4]);
  });

  test('takes account of patterns taught early, but only of secure ones', () => {
    expect(at(2, { alsoTaught: ['ch'] })).toBe(3);
    expect(at(3, { notYet: ['ai'] })).toBe(3);
  });
});
