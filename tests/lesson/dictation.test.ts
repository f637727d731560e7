import { describe, expect, test } from 'vitest';
import { dictation } from '../../src/lesson/dictation/dictation.ts';
import { decide, type LessonBlock, makePart, startPlan } from '../../src/lesson/index.ts';
import { lessonInput, sequences } from './load-lesson.ts';

const passage = {
  title: 'The Marigold',
  text: [
    'The Marigold',
    'Bram sat on the dock. Ines ran to the shop. The ferry had an unforeseeable breakdown at the lighthouse.',
    'Did the dog get wet? A crab hid in the sand.',
  ].join('\n'),
};

/** Returns all blocks of a dictation for a group. */
function blocksOf(input: Parameters<typeof dictation.make>[0], seed = 1): readonly LessonBlock[] {
  return makePart(dictation, startPlan(seed), input).blocks;
}

const rowsOf = (blocks: readonly LessonBlock[], id: string): readonly (readonly string[])[] =>
  blocks.find((block) => block.id === id)?.rows ?? [];

test('the same seed gives the same dictation, and another seed gives another dictation', () => {
  const input = lessonInput('steady-steps', 24);
  expect(blocksOf(input, 4)).toEqual(blocksOf(input, 4));
  expect(blocksOf(input, 5)).not.toEqual(blocksOf(input, 4));
});

test('most words practise the patterns of the lesson, and no word is known by sight', () => {
  const input = lessonInput('steady-steps', 24);
  const words = rowsOf(blocksOf(input), 'words').map(([word]) => input.known.find(word!)!);
  const fresh = words.filter(({ reading }) => reading.requires.some((each) => input.focus.includes(each)));
  expect(words).toHaveLength(6);
  expect(fresh.length).toBeGreaterThanOrEqual(5);
  expect(words.filter(({ standing, homograph }) => standing === 'by-sight' || homograph)).toEqual([]);
});

test('the answers for a sound are all its taught spellings and no others', () => {
  // Long a is spelt a_e, ai and ay once all three are taught: common practice, no source.
  const answers = (step: number): string[] => {
    const input = lessonInput('england-2013', step);
    return Array.from({ length: 30 }, (_, seed) => rowsOf(blocksOf(input, seed), 'sounds'))
      .flat()
      .filter(([sound]) => sound === 'ā')
      .map((row) => row[2]!.split(', ').toSorted().join(' '));
  };
  expect(new Set(answers(12))).toEqual(new Set(['ai ay']));
  expect(new Set(answers(13))).toEqual(new Set(['a_e ai ay']));
});

test('the sound sh is not asked once an ending such as -tion was taught', () => {
  const asked = (step: number): string[] =>
    Array.from({ length: 12 }, (_, seed) =>
      rowsOf(blocksOf(lessonInput('england-2013', step), seed), 'sounds'),
    )
      .flat()
      .map(([sound]) => sound!);
  const { steps } = sequences.find(({ id }) => id === 'england-2013')!;
  const ending = steps.findIndex(({ teaches }) => teaches.includes('tion')) + 1;
  expect(asked(4)).toContain('sh');
  expect(asked(ending)).not.toContain('sh');
});

test('by-sight words of the latest steps come more often than others', () => {
  const input = lessonInput('england-2013', 15);
  const drawn = Array.from({ length: 60 }, (_, seed) =>
    rowsOf(blocksOf(input, seed), 'by-sight').flat(),
  ).flat();
  const times = (word: string): number => drawn.filter((each) => each === word).length;
  expect(times('school') + times('house')).toBeGreaterThan(times('the') + times('of'));
});

describe('the sentences of a dictation', () => {
  test('are readable sentences of the passage, and a composed sentence if none practises the lesson', () => {
    const input = lessonInput('england-2013', 12, {}, passage);
    const sheets = Array.from({ length: 24 }, (_, seed) => rowsOf(blocksOf(input, seed), 'sentences').flat());
    const isFound = (sentence: string): boolean => passage.text.includes(sentence);
    expect(sheets.map((drawn) => drawn.filter(isFound).length)).toEqual(sheets.map(() => 1));
    expect(sheets.map(({ length }) => length)).toEqual(sheets.map(() => 2));
    expect(new Set(sheets.flat().filter(isFound))).toEqual(
      new Set([
        'Bram sat on the dock.',
        'Ines ran to the shop.',
        'Did the dog get wet?',
        'A crab hid in the sand.',
      ]),
    );
  });

  test('are composed if the teacher wants this, or if the passage has no readable sentence', () => {
    const input = lessonInput('england-2013', 12, {}, passage);
    const plan = decide(startPlan(1), dictation, { chosen: { from: 'composed' } });
    const composed = rowsOf(makePart(dictation, plan, input).blocks, 'sentences').flat();
    expect(composed).toHaveLength(2);
    for (const sentence of composed) expect(passage.text).not.toContain(sentence);
    const hard = lessonInput(
      'england-2013',
      12,
      {},
      { title: '', text: 'Extraordinary circumstances prevailed.' },
    );
    expect(rowsOf(blocksOf(hard), 'sentences')).toHaveLength(2);
  });
});

test('a dictation has the chosen number of items of each kind, and a note if no items are chosen', () => {
  const input = lessonInput('england-2013', 20);
  const chosen = { sounds: '10', words: '10', 'by-sight': '10', sentences: '1' };
  const { blocks } = makePart(dictation, decide(startPlan(2), dictation, { chosen }), input);
  expect(blocks.map(({ rows }) => rows.length)).toEqual([10, 10, 10, 1]);
  const none = { sounds: '0', words: '0', 'by-sight': '0', sentences: '0' };
  const empty = makePart(dictation, decide(startPlan(2), dictation, { chosen: none }), input);
  expect(empty.blocks).toEqual([]);
  expect(empty.says).toMatch(/Choose how many/);
});

test.each([
  ['no sequence, nothing taught', { ...lessonInput('steady-steps', 0), sequence: null }],
  ['the first step', lessonInput('steady-steps', 1)],
  ['an empty passage', lessonInput('steady-steps', 3, {}, { title: '', text: '' })],
  [
    'a passage of markup',
    lessonInput('steady-steps', 9, {}, { title: '<b>', text: '<p class="x">\u0000{{</p>\n\n...?!' }),
  ],
  ['names that are none', lessonInput('steady-steps', 9, { names: ['', '...', '<i>', 'a\nb'] })],
])('a dictation never throws an error: %s', (_, input) => {
  const part = makePart(dictation, startPlan(3), input);
  expect(part.blocks.length > 0 || part.says !== null).toBe(true);
});
