import { expect, test } from 'vitest';
import type { PlannedPart } from '../../../lesson/index.ts';
import { printParts } from './printed-part.ts';

const plan = { seed: 1, out: false, chosen: {}, pinned: null };
const part: PlannedPart = {
  id: 'dictation',
  title: 'Dictation',
  says: null,
  plan,
  blocks: [
    {
      id: 'words',
      title: 'Words',
      layout: 'table',
      note: 'Say each word twice.',
      columns: [
        { head: '', shows: 'both' },
        { head: 'Word', shows: 'blank' },
        { head: 'Marks', shows: 'key' },
      ],
      rows: [['1', 'sail', 's\u0101il']],
    },
    {
      id: 'clues',
      title: 'Clues',
      layout: 'lines',
      columns: [{ head: '', shows: 'key' }],
      rows: [['a clue']],
    },
  ],
};

test('a pupils’ sheet has a line instead of the answer, and nothing for the teacher', () => {
  const [printed] = printParts([part], 'pupils');
  expect(printed?.blocks).toEqual([
    {
      id: 'words',
      title: 'Words',
      layout: 'table',
      note: '',
      numbered: true,
      columns: [
        { head: '', blank: false, forTeacher: false },
        { head: 'Word', blank: true, forTeacher: false },
      ],
      rows: [['1', '']],
    },
  ]);
});

test('the key has every column and every note', () => {
  const { blocks } = printParts([part], 'key')[0]!;
  expect(blocks.map(({ rows }) => rows)).toEqual([[['1', 'sail', 's\u0101il']], [['a clue']]]);
  expect(blocks[0]!.note).toBe('Say each word twice.');
});

test('a part that is left out or has no content for its readers is not printed', () => {
  expect(printParts([{ ...part, plan: { ...plan, out: true } }], 'key')).toEqual([]);
  expect(printParts([{ ...part, blocks: part.blocks.slice(1) }], 'pupils')).toEqual([]);
});

test('rows on which pupils only write are numbered, and an empty column is not printed', () => {
  const dictated: PlannedPart = {
    ...part,
    blocks: [
      {
        id: 'sounds',
        title: 'Sounds',
        layout: 'table',
        columns: [
          { head: 'Sound', shows: 'key' },
          { head: 'Letters', shows: 'blank' },
          { head: 'Built from', shows: 'key' },
        ],
        rows: [['ā', 'ai, ay', '']],
      },
    ],
  };
  const [key] = printParts([dictated], 'key')[0]!.blocks;
  expect(key).toMatchObject({ numbered: true, rows: [['ā', 'ai, ay']] });
  expect(printParts([dictated], 'pupils')[0]!.blocks[0]).toMatchObject({ numbered: true, rows: [['']] });
});

test('a cell is a single line of printable text', () => {
  const nasty = { ...part.blocks[0]!, rows: [['a\nb\u0000', '', '']] };
  expect(printParts([{ ...part, blocks: [nasty] }], 'pupils')[0]!.blocks[0]!.rows[0]![0]).toBe('a b');
});
