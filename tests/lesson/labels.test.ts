import { afterEach, expect, test } from 'vitest';
import { decide, makePart, onePage, parts, startPlan } from '../../src/lesson/index.ts';
import { lessonTexts } from '../../src/pages/lesson/lesson-texts.ts';
import { sayLabel } from '../../src/pages/lesson/say-label.ts';
import { spanish } from '../../src/wording/es.ts';
import { listMessages } from '../../src/wording/list-messages.ts';
import { sayFrom } from '../../src/wording/say.ts';
import { speakEnglish } from '../../src/wording/speak-english.ts';
import { lessonInput } from './load-lesson.ts';

afterEach(speakEnglish);

/** Every label that the parts show to a teacher: at early steps, at later steps, and with nothing taught. */
const labels = [0, 1, 12, 40, 70].flatMap((step) => {
  const input = lessonInput('steady-steps', step);
  return parts.flatMap((maker) => {
    const { says } = makePart(maker, decide(startPlan(7), maker, { out: false }), input);
    const choices = maker.choices(input);
    const options = choices.flatMap((choice) => choice.options.map(({ label }) => label));
    return [
      maker.title,
      maker.use,
      onePage.name,
      ...choices.map(({ label }) => label),
      ...options,
      ...(says ? [says] : []),
    ];
  });
});

test('in English, each label is shown as the lesson gives it', () => {
  expect(labels.length).toBeGreaterThan(200);
  expect(labels.filter((label) => sayLabel(label) !== label)).toEqual([]);
  expect([...lessonTexts].filter(([label]) => sayLabel(label) !== label)).toEqual([]);
});

test('in Spanish, only words, numbers and spellings stay in English', () => {
  sayFrom(listMessages('es', spanish));
  const left = labels.filter((label) => sayLabel(label) === label && /[a-z]{2}[^a-z].*[a-z]{2}/.test(label));
  expect([...new Set(left)]).toEqual([]);
});
