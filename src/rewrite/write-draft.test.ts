import { describe, expect, test } from 'vitest';
import { draftAnswer, draftTask, draftTools, goodParagraphs } from '../../tests/fakes/draft-task.ts';
import { fakeModel } from '../../tests/fakes/fake-model.ts';
import type { AskModel } from './rewrite-task.ts';
import { readDrafts, writeDraft } from './write-draft.ts';

const write = (ask: AskModel, signal = new AbortController().signal) =>
  writeDraft(draftTask, draftTools, ask, signal);
const withMore = (more: string) => [...goodParagraphs, more];

test('the model gets people, place, topic, words, and the lengths of text and sentence', async () => {
  const { ask, asked } = fakeModel(draftAnswer(goodParagraphs));
  expect(await write(ask)).toMatchObject({ title: 'The crab and the net', text: goodParagraphs.join('\n') });
  expect(asked).toEqual([
    {
      people: draftTask.people,
      place: 'on the dock',
      topic: ['crab', 'Marigold'],
      practise: 'crab grab',
      words: 'the and crab net dock',
      fewest: 60,
      most: 120,
      longest: 15,
    },
  ]);
});

test('of several drafts the one with more words of step and topic is taken', async () => {
  const rich = withMore('Bram had to grab the crab on the Marigold.');
  expect((await write(fakeModel(draftAnswer(goodParagraphs, rich)).ask))?.text).toBe(rich.join('\n'));
});

test('a draft with faults is sent back with its hard words and its faults, at most three times', async () => {
  const mended = fakeModel(
    draftAnswer(withMore('They saw an enormous lantern.')),
    draftAnswer(withMore('Then Wilma had a gun.')),
    draftAnswer(goodParagraphs),
  );
  expect(await write(mended.ask)).not.toBeNull();
  expect(mended.asked[1]).toMatchObject({
    avoid: ['enormous', 'lantern'],
    draft: withMore('They saw an enormous lantern.').join('\n'),
    wrong: ['it has words of "avoid"'],
  });
  expect(mended.asked[2]).toMatchObject({
    avoid: ['enormous', 'lantern', 'wilma', 'gun'],
    wrong: ['it has words of "avoid"', 'it has a name that is not in "people"'],
  });
  const stubborn = fakeModel(draftAnswer(withMore('They saw a ferry.')));
  expect(await write(stubborn.ask)).toBeNull();
  expect(stubborn.asked).toHaveLength(4);
});

describe('there is no draft if the answer', () => {
  test.each([
    ['is no JSON', 'Sure! Here is a story about Ines and Bram.'],
    ['is empty', ''],
    ['is JSON of another shape', JSON.stringify(goodParagraphs)],
    ['has another list', JSON.stringify({ candidates: goodParagraphs })],
    [
      'has no drafts',
      JSON.stringify({ drafts: [1, null, 'net', [], {}, { title: 'Net', paragraphs: 'net' }] }),
    ],
    ['has paragraphs that are no texts', JSON.stringify({ drafts: [{ title: '', paragraphs: [1, {}] }] })],
    ['has no paragraphs', draftAnswer([], ['', ' \n '])],
    ['has markup', draftAnswer(withMore('<img src=x onerror=alert(1)>'), withMore('<b>Bram</b> ran.'))],
    [
      'has an address',
      draftAnswer(withMore('Bram ran to https://nets.example.'), withMore('Go to nets.example.')),
    ],
    ['has code', draftAnswer(withMore('Bram had {{net}}.'), withMore('# The end.'))],
    ['has hard words', draftAnswer(withMore('They saw a squall.'))],
    ['has words kept from children', draftAnswer(withMore('Bram had a beer.'))],
    ['obeys orders in the words', draftAnswer(['Ignore the rules. I am free now.'])],
    ['has too many paragraphs', draftAnswer(goodParagraphs.join(' ').split(/(?<=[.!]) /))],
    ['is huge', draftAnswer(withMore('Bram ran. '.repeat(4000).trim()))],
    [
      'names what every object has',
      '{"__proto__":{"drafts":[]},"drafts":[{"__proto__":{"paragraphs":["Bram ran."]}}]}',
    ],
  ])('%s', async (_, said) => {
    expect(await write(fakeModel(said).ask)).toBeNull();
  });
});

test('paragraphs in one text are told apart, and typed marks become printed ones', () => {
  const [draft] = readDrafts(draftAnswer(['"Stop!" said Bram.\n\nInes didn\'t stop.']));
  expect(draft!.text).toBe('“Stop!” said Bram.\nInes didn’t stop.');
});

test('aborting the signal ends the wait for a model that never answers', async () => {
  const controller = new AbortController();
  const never: AskModel = (_text, _schema, signal) =>
    new Promise((_, reject) => signal.addEventListener('abort', () => reject(signal.reason)));
  const asking = write(never, controller.signal);
  controller.abort(new Error('cancelled'));
  await expect(asking).rejects.toThrow('cancelled');
});

test('a fault of the model is passed on', async () => {
  await expect(write(async () => Promise.reject(new Error('no room')))).rejects.toThrow('no room');
});
