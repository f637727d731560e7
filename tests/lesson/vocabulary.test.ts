import { expect, test } from 'vitest';
import { findCandidates } from '../../src/lesson/vocabulary/find-candidates.ts';
import { vocabulary } from '../../src/lesson/vocabulary/vocabulary.ts';
import { checkOddInputs, inputAt, makeOf, storm } from './check-sheet.ts';
import { lessonInput } from './load-lesson.ts';

const late = inputAt('steady-steps', 50);
const withStorm = { ...late, passage: storm };

test('the vocabulary part is made for any group and any passage', () => checkOddInputs(vocabulary));

test('no vocabulary word is a name, grammar word or by-sight word, and forms are listed with their base', () => {
  const words = findCandidates(withStorm).map(({ word }) => word.word);
  for (const word of ['mist', 'knight', 'glow', 'bench', 'gull', 'sail']) expect(words).toContain(word);
  for (const word of ['the', 'was', 'and', 'odd', 'bram', 'falk', 'gulls', 'rings'])
    expect(words).not.toContain(word);
  expect(findCandidates(withStorm).find(({ word }) => word.word === 'gull')!.forms).toEqual(['gulls']);
  const both = { title: '', text: 'A gull sat on the mast. The gulls rose.' };
  const candidates = findCandidates({ ...late, passage: both });
  expect(candidates.find(({ word }) => word.word === 'gull')!.forms).toEqual(['gull', 'gulls']);
  const bySight = lessonInput('steady-steps', 50, { bySight: ['knight'] }, storm);
  expect(findCandidates(bySight).map(({ word }) => word.word)).not.toContain('knight');
});

test('vocabulary words that are neither too common nor too rare come first', () => {
  const passage = { title: '', text: 'The lantern was a good thing. The gherkin was not. We saw a lantern.' };
  expect(findCandidates({ ...late, passage })[0]!.word.word).toBe('lantern');
});

test('an unreadable vocabulary word is used only if the teacher picks it, and only on the key', () => {
  const early = { ...inputAt('steady-steps', 24), passage: storm };
  const offered = vocabulary.choices(early)[0]!.options;
  expect(offered.length).toBeLessThanOrEqual(7);
  const hard = offered.find(({ label }) => label.endsWith('(not yet readable)'))!;
  expect(hard).toBeDefined();
  for (let seed = 0; seed < 20; seed++) {
    const { blocks } = makeOf(vocabulary, early, seed);
    expect(early.known.reads(blocks[0]!.rows[0]![0]!)).toBe(true);
  }
  const { blocks } = makeOf(vocabulary, early, 1, { word: hard.value });
  expect(blocks[0]!.rows[0]![0]).toBe(hard.value);
  expect(blocks[0]!.columns[0]!.shows).toBe('key');
});

test('a vocabulary word has its meaning, marks, word family and sentences', () => {
  const { blocks } = makeOf(vocabulary, withStorm, 1, { word: 'gull' });
  const [word, meaning, marked] = blocks[0]!.rows[0]!;
  expect([word, marked]).toEqual(['gull', 'gŭll']);
  expect(meaning).toMatch(/bird/);
  const sail = makeOf(vocabulary, withStorm, 1, { word: 'sail' }).blocks[0]!.rows[0]!;
  expect(sail[4]).toContain('sailor');
  const sentences = blocks.slice(1).flatMap(({ rows }) => rows.flat());
  expect(sentences).toHaveLength(1);
  expect(sentences[0]).toMatch(/^When the lantern .* the gulls rose/);
  expect(makeOf(vocabulary, late, 1).blocks[0]!.note).toContain('Say your own sentence');
});

test('without a passage, the vocabulary word practises the lesson’s patterns', () => {
  for (let seed = 0; seed < 10; seed++) {
    const word = makeOf(vocabulary, late, seed).blocks[0]!.rows[0]![0]!;
    expect(late.known.find(word)!.standing).toBe('fresh');
  }
});
