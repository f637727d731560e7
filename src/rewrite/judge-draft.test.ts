import { describe, expect, test } from 'vitest';
import { draftTask, draftTools, goodParagraphs } from '../../tests/fakes/draft-task.ts';
import { createDraftJudge } from './judge-draft.ts';

const judge = createDraftJudge(draftTask, draftTools);
const good = goodParagraphs.join('\n');
const faults = (text: string) => judge({ title: '', text }).faults;
const withMore = (more: string) => `${good} ${more}`;

test('a draft passes with readable and fit words, its people, its place and its length', () => {
  expect(judge({ title: 'The Crab and the Net', text: good })).toEqual({
    title: 'The crab and the net',
    text: good,
    faults: [],
    hard: [],
    practised: 3,
    used: ['crab'],
  });
});

describe('a draft passes', () => {
  test.each([
    ['with a name of the topic', 'They ran to the Marigold.'],
    ['with a name in the possessive', 'It was Bram’s net.'],
    ['with a capital after an opening quote', 'Bram said, “Get the net.”'],
    ['with a contraction', 'It didn’t let go, and I’m glad.'],
    ['with the number of its people', 'The two ran off.'],
    ['with one as no number', 'Bram had one net.'],
  ])('%s', (_, more) => {
    expect(faults(withMore(more))).toEqual([]);
  });
});

describe('a draft has the fault', () => {
  test.each([
    ['hard-word', 'They saw an enormous net.', ['enormous']],
    ['hard-word', 'Bram had a gun.', ['gun']],
    ['hard-word', 'Guns were on the dock.', ['guns']],
    ['name-added', 'Then Falk came.', []],
    ['name-added', 'Then they saw Wilma.', ['wilma']],
    ['name-added', 'Rose ran up.', []],
    ['name-added', '“Rose is here,” said Bram.', []],
    ['number-added', 'They got ten nets.', []],
    ['number-added', 'They got 10 nets.', []],
    ['long-sentence', 'Bram ran and ran and ran and ran and ran and ran and ran and ran to the net.', []],
    ['too-long', 'Bram ran to the net. '.repeat(12).trim(), []],
  ])('%s: %s', (fault, more, hard) => {
    const judged = judge({ title: '', text: withMore(more) });
    expect(judged.faults).toContain(fault);
    expect(judged.hard).toEqual(hard);
  });

  test('too-short', () => expect(faults(goodParagraphs[0]!)).toEqual(['too-short']));
  test('person-missing', () => expect(faults(good.replaceAll('Ines', 'Bram'))).toEqual(['person-missing']));
  test('place-missing', () => expect(faults(good.replaceAll('dock', 'rock'))).toEqual(['place-missing']));
  test('repeats', () =>
    expect(faults(Array(12).fill('Ines and Bram ran on the dock.').join(' '))).toEqual(['repeats']));
  test('pronoun-added', () => {
    const two = createDraftJudge(
      {
        ...draftTask,
        people: [
          { name: 'Ines', pronoun: 'she' },
          { name: 'Bram', pronoun: 'she' },
        ],
      },
      draftTools,
    );
    expect(two({ title: '', text: good }).faults).toEqual(['pronoun-added']);
  });
});

test('letters that are no word to the reader count as hard', () => {
  const nothing = createDraftJudge(draftTask, { ...draftTools, read: () => [] });
  expect(nothing({ title: '', text: 'Бот.' }).hard).toEqual(['Бот']);
});

test.each([
  ['Ines and the Crab', 'Ines and the crab'],
  ['The Lost Net', 'The lost net'],
  ['The Enormous Net', 'Ines and Bram'],
  ['Otto and the Net', 'Ines and Bram'],
  ['A Gun', 'Ines and Bram'],
  ['<b>Net</b>', 'Ines and Bram'],
  ['', 'Ines and Bram'],
])('the title “%s” becomes “%s”', (title, shown) => {
  expect(judge({ title, text: good }).title).toBe(shown);
});
