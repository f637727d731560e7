import { expect, test } from 'vitest';
import { readUnfitWords } from '../../src/data/read-unfit-words.ts';
import { readWordList } from '../../src/data/read-word-list.ts';
import { beginPassage, drawStory } from '../../src/lesson/begin-passage/index.ts';
import { createPicker } from '../../src/lesson/index.ts';
import { createShader, shadeText } from '../../src/passage/shade-line.ts';
import { createDraftJudge } from '../../src/rewrite/judge-draft.ts';
import { lessonInput, sequences, someSteps } from './load-lesson.ts';

type Input = ReturnType<typeof lessonInput>;
const draw = ({ known, group, focus }: Input, seed = 1, topic: string[] = []) =>
  drawStory(known, { names: group.names, focus, topic }, createPicker(seed, 'story'));

const everyEighth = sequences.flatMap(({ id, ...sequence }) =>
  someSteps({ id, ...sequence }).map((step) => ({ id, step })),
);

test.each(everyEighth)(
  'a story for step $step of $id has people, a place and words the group can read',
  ({ id, step }) => {
    const input = lessonInput(id, step);
    const story = draw(input);
    if (!story) return expect(input.known.words.length).toBeLessThan(150);
    const { people, place, words, practise } = story;
    expect(new Set(people.map(({ name }) => name)).size).toBe(2);
    expect(input.known.reads(`${place.at} the ${place.name}`)).toBe(true);
    for (const word of [...words.slice(0, 300), ...practise.slice(0, 100)])
      expect(input.known.reads(word), word).toBe(true);
    for (const word of practise) expect(words).toContain(word);
  },
);

// Outside sources: npm naughty-words and profane-words, and the words that we keep off lesson sheets. Words that were
// checked one by one for lessons are left out.
test('no word that is kept from children is fit for a story', () => {
  const story = draw(
    lessonInput('steady-steps', sequences.find(({ id }) => id === 'steady-steps')!.steps.length),
  )!;
  const checked = readWordList('more-lesson-words.txt');
  const unfit = [...readUnfitWords(), ...readWordList('not-in-lessons.txt')].filter(
    (word) => !checked.has(word),
  );
  expect(unfit.length).toBeGreaterThan(2000);
  expect(unfit.filter((word) => !word.includes(' ') && story.isFit(word))).toEqual([]);
});

test.each([
  ['crab', true],
  ['crabs', true],
  ["crab's", true],
  ["crabs'", true],
  ["didn't", true],
  ["can't", true],
  ["i'm", true],
  ['red-hot', false],
  ['gun', false],
  ["gun's", false],
  ['gun-shot', false],
  ['qwxt', false],
  ["'", false],
])('whether “%s” is fit for a story: %s', (word, isFit) => {
  expect(draw(lessonInput('steady-steps', 50))!.isFit(word)).toBe(isFit);
});

test('the topic has only words that the group can read and that are fit, and names as the group writes them', () => {
  const input = lessonInput('steady-steps', 30, { names: ['Ines', 'Bram', 'Marigold'] });
  expect(draw(input, 1, ['crab', 'lighthouse', 'gun', 'marigold', 'crab'])!.topic).toEqual([
    'crab',
    'Marigold',
  ]);
});

test('the same seed draws the same story, and a group that knows too little gets none', () => {
  const input = lessonInput('steady-steps', 24);
  expect(draw(input, 5)!.people).toEqual(draw(input, 5)!.people);
  expect(new Set([1, 2, 3, 4, 5, 6].map((seed) => draw(input, seed)!.place.name)).size).toBeGreaterThan(1);
  expect(draw(lessonInput('steady-steps', 1))).toBeNull();
});

test('a word that is a name too is a name at the start of a sentence, unless it is a word of grammar', () => {
  const { isName } = draw(lessonInput('steady-steps', 24))!;
  expect(['Otto', 'Rose', 'Will', 'The', 'Nets'].map(isName)).toEqual([true, true, false, false, false]);
});

test('the drafts made from frames pass the checks for the drafts of a model', () => {
  for (const { id, step } of everyEighth) {
    const input = lessonInput(id, step);
    const { group, known, focus, judge } = input;
    const wish = { names: group.names, focus };
    const passage = beginPassage(known, wish, createPicker(step, 'passage'));
    const story = drawStory(known, wish, createPicker(step, 'story'));
    if (!passage || !story) continue;
    const all = [
      { name: 'Ines', pronoun: 'she' },
      { name: 'Otto', pronoun: 'he' },
      { name: 'Bram', pronoun: 'he' },
      { name: 'Wilma', pronoun: 'she' },
    ] as const;
    const shade = createShader(judge);
    const judged = createDraftJudge(
      {
        ...story,
        people: all.filter(({ name }) => passage.text.includes(name)),
        fewest: 60,
        most: 120,
        longest: 20,
      },
      { ...story, read: (text) => shadeText(text, shade(text)) },
    )(passage);
    // The frames choose a place of their own.
    const faults = judged.faults.filter((fault) => fault !== 'place-missing');
    expect({ faults, hard: judged.hard }, `${id} ${step}: ${passage.text}`).toEqual({ faults: [], hard: [] });
  }
});
