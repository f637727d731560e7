import { expect, test } from 'vitest';
import { makePart, parts, startPlan } from '../../src/lesson/index.ts';
import { firstTexts } from '../../src/pages/shelf/first-texts.ts';
import { lessonInput } from './load-lesson.ts';

const phrases = parts.find(({ id }) => id === 'smooth-reading')!;

test('every text of the first shelf has a lesson that cuts the text into phrases', () => {
  for (const { name, title, starter, step, text } of firstTexts) {
    const input = lessonInput(starter, step, {}, { title, text });
    const { blocks } = makePart(phrases, startPlan(7), input);
    expect(blocks.length, name).toBeGreaterThan(0);
  }
});
