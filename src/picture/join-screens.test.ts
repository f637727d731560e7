import { describe, expect, test } from 'vitest';
import { joinScreens, type ScreenLine } from './join-screens.ts';
import type { PictureLine } from './picture-reading.ts';

const STORY = [
  'The Marigold left Tarn Quay before the sun was up.',
  'Ines stood at the rail and counted the lamps on the hill.',
  'Fog came down between the ferry and the lighthouse.',
  'Otto could hear the bell, but he could not see it.',
  'Mr. Falk said that the fish market would open late.',
  'Nobody on the ferry minded waiting for the light.',
  'A gull sat on the mast and looked at them all.',
  'Then the wind turned, and the fog went out to sea.',
  'Wilma waved from the end of the long stone pier.',
  'The bread on her table was still warm when they came.',
];

function lineOf(text: string): PictureLine {
  const box = { left: 0, top: 0, right: 10, bottom: 10 };
  const words = text.split(' ').map((word) => ({ text: word, box, sureness: 0.9, isSure: true }));
  return { words, box, size: 16, beginsParagraph: false };
}
const read = (texts: readonly string[]): PictureLine[] => texts.map(lineOf);
const textsOf = (lines: readonly PictureLine[]): string[] =>
  lines.map(({ words }) => words.map(({ text }) => text).join(' '));
function joinAll(screens: readonly (readonly string[])[]): ReturnType<typeof joinScreens> {
  let joined = joinScreens([], [], 0);
  screens.forEach((texts, n) => {
    joined = joinScreens(joined.lines, read(texts), n);
  });
  return joined;
}

describe('several screens of one document', () => {
  test('are one text when the teacher scrolled down', () => {
    const { lines, where } = joinAll([STORY.slice(0, 5), STORY.slice(3, 8), STORY.slice(6)]);
    expect(textsOf(lines)).toEqual(STORY);
    expect(where).toBe('after');
  });

  test('are one text when the teacher scrolled up', () => {
    const { lines, added, where } = joinAll([STORY.slice(4, 9), STORY.slice(0, 6)]);
    expect(textsOf(lines)).toEqual(STORY.slice(0, 9));
    expect(where).toBe('before');
    expect(textsOf(added)).toEqual(STORY.slice(0, 4));
  });

  test('lose a line that the edge of a screen cuts through', () => {
    const { lines } = joinAll([
      [...STORY.slice(0, 4), 'Mr Foik soid thot tbe'],
      ['Ohho coulcl hcor tbe', ...STORY.slice(3, 9)],
    ]);
    expect(textsOf(lines)).toEqual(STORY.slice(0, 9));
  });

  test('overlap even when some letters were read differently', () => {
    const wrong = STORY.slice(2, 7).map((text) => text.replace('th', 'tn').replace('ll', 'li'));
    const { lines } = joinAll([STORY.slice(0, 5), wrong]);
    expect(lines).toHaveLength(7);
  });

  test.each([
    ['the same again', STORY.slice(1, 6)],
    ['a part of it', STORY.slice(2, 4)],
    ['nothing', []],
  ])('add nothing when the new screen has %s', (_name, again) => {
    const { lines, added, where } = joinAll([STORY.slice(0, 6), again]);
    expect([textsOf(lines), added, where]).toEqual([STORY.slice(0, 6), [], 'nothing']);
  });

  test('follow one another when they have no line in common', () => {
    const { lines, where } = joinAll([STORY.slice(0, 4), STORY.slice(5)]);
    expect(textsOf(lines)).toEqual([...STORY.slice(0, 4), ...STORY.slice(5)]);
    expect(where).toBe('apart');
  });

  test('are joined below a header that stays on the screen', () => {
    const head = 'Harbour news, page by page, for all groups';
    const { lines } = joinAll([
      [head, ...STORY.slice(0, 5)],
      [head, ...STORY.slice(3, 8)],
    ]);
    expect(textsOf(lines)).toEqual([head, ...STORY.slice(0, 8)]);
  });

  test('give for each line the picture it comes from', () => {
    const { lines } = joinAll([STORY.slice(0, 5), STORY.slice(3, 8)]);
    expect(lines.map(({ screen }: ScreenLine) => screen)).toEqual([0, 0, 0, 0, 0, 1, 1, 1]);
  });
});
