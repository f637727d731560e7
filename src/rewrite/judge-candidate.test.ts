import { describe, expect, test } from 'vitest';
import { fakeTools } from '../../tests/fakes/rewrite-tools.ts';
import { findNames } from './find-facts.ts';
import { createCandidateJudge, rankCandidates } from './judge-candidate.ts';
import type { RewriteTask } from './rewrite-task.ts';

const task: RewriteTask = {
  sentence: 'Bram did not purchase twelve enormous lanterns.',
  before: 'Wilma and Bram went to the market.',
  after: 'The Marigold was late.',
  names: findNames('Then Wilma and Bram went. The old Marigold was late.'),
  preTeach: [],
  longest: 12,
};
const judge = createCandidateJudge(task, fakeTools);
const unfit = (text: string) => judge(text).unfit;

describe('a rewriting passes', () => {
  test.each([
    ['with easier words and all facts', 'Bram did not get twelve big lamps.'],
    ['with a number in digits', 'Bram did not get 12 big lamps.'],
    ['with a contraction for the negation', 'Bram didn’t get twelve big lamps.'],
    ['with a word that denies by a part', 'Bram was unwilling to get twelve big lamps.'],
    ['with a name from beside it', 'Bram did not get Wilma twelve big lamps.'],
  ])('%s', (_, text) => {
    expect(judge(text)).toMatchObject({ text, unfit: null, readable: 1, hard: [] });
  });
});

describe('a rewriting is dropped', () => {
  test.each([
    ['same', 'Bram did not purchase twelve enormous lanterns.'],
    ['same', 'BRAM did not purchase twelve “enormous” lanterns!'],
    ['name-lost', 'He did not get twelve big lamps.'],
    ['name-added', 'Bram and Otto did not get twelve big lamps.'],
    ['number-lost', 'Bram did not get big lamps.'],
    ['number-lost', 'Bram did not get ten big lamps.'],
    ['number-added', 'Bram did not get twelve big lamps at 6.'],
    ['negation-lost', 'Bram did get twelve big lamps.'],
    ['negation-lost', 'Bram got twelve big lamps into the inn.'],
    ['negation-added', 'Bram did not get twelve big lamps and no bed.'],
    ['not-more-readable', 'Bram did not purchase twelve enormous enormous lanterns.'],
    ['other-meaning', 'Bram did not see twelve cats and dogs.'],
    ['too-long', `Bram did not get twelve big lamps ${'and the big lamps '.repeat(6)}.`],
  ])('%s: %s', (reason, text) => {
    expect(unfit(text)).toBe(reason);
  });
});

test('rewritings are sorted by readability, then by kept content, then shorter first, without duplicates', () => {
  const judged = [
    'Bram did not get twelve big lanterns.',
    'Bram did not get twelve big lamps in the end.',
    'Bram did not get twelve big lamps.',
    'Bram did not get twelve big lamps!',
    'Bram did not get twelve lamps.',
    'Bram saw.',
  ].map(judge);
  expect(rankCandidates(judged).map(({ text }) => text)).toEqual([
    'Bram did not get twelve big lamps!',
    'Bram did not get twelve big lamps in the end.',
    'Bram did not get twelve lamps.',
    'Bram did not get twelve big lanterns.',
  ]);
});

test('a rewriting may keep words to pre-teach', () => {
  const taught = createCandidateJudge(task, {
    ...fakeTools,
    read: (text) =>
      fakeTools.read(text).map((word) => ({
        ...word,
        standing: /lantern/.test(text.slice(word.start, word.end)) ? 'by-sight' : word.standing,
      })),
  });
  expect(taught('Bram did not get twelve big lanterns.')).toMatchObject({ unfit: null, readable: 1 });
});
