import { describe, expect, test } from 'vitest';
import type { LessonInput } from '../../src/lesson/index.ts';
import { decide, makePart, startPlan } from '../../src/lesson/index.ts';
import { builtWords } from '../../src/lesson/word-building/built-words.ts';
import { wordBuilding } from '../../src/lesson/word-building/word-building.ts';
import { lessonInput } from './load-lesson.ts';

const late = lessonInput('steady-steps', 60);
const made = (input: LessonInput, chosen: Record<string, string>) =>
  makePart(wordBuilding, decide(startPlan(3), wordBuilding, { chosen }), input);

// Outside source: England's national curriculum 2013, English Appendix 1, years 1 and 2. These are example words of the
// rules for adding endings, from memory.
describe('the curriculum’s example words', () => {
  test.each([
    ['hopping', 'hop', 'double'],
    ['dropped', 'drop', 'double'],
    ['saddest', 'sad', 'double'],
    ['runner', 'run', 'double'],
    ['hiking', 'hike', 'drop-e'],
    ['nicest', 'nice', 'drop-e'],
    ['shiny', 'shine', 'drop-e'],
    ['copied', 'copy', 'y-to-i'],
    ['happiest', 'happy', 'y-to-i'],
    ['crying', 'cry', 'none'],
    ['jumping', 'jump', 'none'],
  ])('%s is built from %s with the change “%s”', (word, base, change) => {
    const built = builtWords(late.known).find((each) => each.word.word === word);
    expect(built).toMatchObject({ base, affix: { change } });
  });
});

test('word building uses words of the passage first', () => {
  const passage = {
    title: 'The wet dog',
    text: 'Otto was mopping the deck. The dog kept flapping its ears.',
  };
  const { blocks } = made(lessonInput('steady-steps', 60, {}, passage), {
    what: 'change-double',
    count: '4',
  });
  const words = blocks[0]!.rows.map((row) => row[2]);
  expect(words).toContain('flapping');
});

test('wrong spellings are on the pupils’ sheet only if the teacher chooses this', () => {
  const shown = (wrong: string) =>
    made(late, { what: 'change-double', wrong }).blocks.flatMap(({ id, columns }) =>
      columns.filter(({ shows }) => shows === 'both').map(({ head }) => `${id} ${head}`),
    );
  expect(shown('key')).not.toContain('which Choose');
  expect(shown('pupils')).toContain('which Choose');
});

test('before any ending is taught, word building shows a note on what to do', () => {
  const { blocks, says } = made(lessonInput('steady-steps', 2), {});
  expect(blocks).toEqual([]);
  expect(says).toMatch(/nothing to build yet/);
});
