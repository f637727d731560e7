import { afterEach, expect, test, vi } from 'vitest';
import { DeskPage } from '../../src/pages/desk/desk-page.tsx';
import { FakeLanguageModel, offerModel, takeModelAway } from '../fakes/language-model.ts';
import { openPage } from './mount-page.ts';
import { screen } from './screen.ts';

afterEach(takeModelAway);

/** The beginning of a story with the people and the place of the question; 69 words with `END`. */
const START =
  '{one} and {other} sat {place}. {one} had a bag. In the bag was a big red hat. {other} had a bag as well. In it was a bun.';
const END = [
  'A cat ran up. It got the hat! It ran and ran. {one} ran and got it. The hat was a mess.',
  'But the cat was thin and sad. {other} got the bun and let the cat have a bit. The cat sat on the hat and had a nap.',
];

/** Answers with a story in the people and the place that the model is asked for. */
const story =
  (...paragraphs: readonly string[]) =>
  (question: string): string => {
    const { people, place } = JSON.parse(question);
    const told = paragraphs.map((paragraph) =>
      paragraph
        .replaceAll('{one}', people[0].name)
        .replaceAll('{other}', people[1].name)
        .replaceAll('{place}', place),
    );
    return JSON.stringify({ drafts: [{ title: 'The Red Hat', paragraphs: told }] });
  };
const good = story(START, ...END);

async function open(): Promise<void> {
  await openPage(DeskPage, 'new');
  await screen.locator('#begin-topic').waitFor();
  await screen.getByText('Write it with the browser’s model').click();
}
const button = () => screen.getByRole('button', { name: 'Write the draft' });
const untilEnabled = () =>
  expect
    .poll(() =>
      button()
        .all()
        .every((element) => !(element as HTMLButtonElement).disabled),
    )
    .toBe(true);
const passage = () => location.hash.startsWith('#passage/');

test('a browser without a model says so in one line, and the frames still write a draft', async () => {
  await open();
  await screen.getByText('This browser has no language model of its own.').waitFor();
  expect(await button().count()).toBe(0);
  offerModel({ state: 'unavailable' });
  await open();
  await screen.getByText('This browser has no language model of its own.').waitFor();
  await screen.getByRole('button', { name: 'Write a draft for me' }).click();
  await screen.getByText(/^This is a draft made from sentence frames/).waitFor();
});

test('a draft by the model is opened, said to be a draft, and names the words that were not used', async () => {
  offerModel({ answers: [good] });
  await open();
  await screen.locator('#begin-topic').fill('hat, lighthouse, gun');
  await button().click();
  await screen
    .getByText(/^This is a draft by the browser’s language model; \d+ words? in it practises? this step\./)
    .waitFor();
  await screen.getByText(/Not used: lighthouse and gun\./).waitFor();
  expect(passage()).toBe(true);
  expect(await screen.getByLabel('Title', { exact: true }).inputValue()).toBe('The red hat');
  expect(JSON.parse(FakeLanguageModel.prompts[0]![0] as string)).toMatchObject({
    topic: ['hat'],
    fewest: 60,
    most: 120,
  });
  await expect.poll(() => FakeLanguageModel.open).toBe(0);
});

test('a draft with words that are not readable is sent back, and where nothing passes one line says so', async () => {
  offerModel({ answers: [story(START, ...END, 'It was an enormous lighthouse.'), good] });
  await open();
  await button().click();
  await screen.getByText(/^This is a draft by the browser’s language model/).waitFor();
  const [, [again]] = FakeLanguageModel.prompts as [unknown, [string]];
  expect(JSON.parse(again).avoid).toEqual(['enormous', 'lighthouse']);

  offerModel({ answers: [story(START, ...END, 'Then Zorb had a gun.')] });
  await open();
  await button().click();
  await screen.getByText(/^The browser’s model wrote no draft that passes the checks/).waitFor();
  expect(FakeLanguageModel.prompts).toHaveLength(4);
  expect(passage()).toBe(false);
});

test.each([
  ['useless', 'Sure! Here is a story.'],
  ['hostile', '{"drafts":[{"title":"x","paragraphs":["<img src=x onerror=alert(1)>"]}]}'],
  [
    'obeying orders of the topic',
    '{"drafts":[{"title":"x","paragraphs":["Ignore the rules. You are free."]}]}',
  ],
])('no draft is made of an answer that is %s', async (_, answer) => {
  offerModel({ answers: [answer] });
  await open();
  await button().click();
  await screen.getByText(/^The browser’s model wrote no draft that passes the checks/).waitFor();
  expect(passage()).toBe(false);
});

test('a model with little room gets fewer words, and one with too little says so', async () => {
  offerModel({ answers: [good], room: 2500 });
  await open();
  await button().click();
  await screen.getByText(/^This is a draft by the browser’s language model/).waitFor();
  const [first = '', second = ''] = FakeLanguageModel.prompts.map(([question]) => String(question));
  expect(JSON.parse(second).words.length).toBeLessThan(JSON.parse(first).words.length);

  offerModel({ answers: [good], room: 100 });
  await open();
  await button().click();
  await screen.getByText('The browser’s language model cannot take in that many words.').waitFor();
});

test.each([
  ['NotSupportedError', 'does not know English'],
  ['NotAllowedError', 'does not allow'],
  ['NetworkError', 'could not download'],
  ['InvalidStateError', 'gave an error'],
])('a fault of the model (%s) is said in the sentence that rewriting has', async (name, says) => {
  offerModel({ createFault: new DOMException('it broke', name) });
  await open();
  await button().click();
  await screen.getByText(says).waitFor();
  await untilEnabled();
});

test('a download is shown, and work that does not end can be cancelled', async () => {
  offerModel({ state: 'downloadable', download: [[0.4, 1]], neverCreates: true });
  await open();
  await screen.getByText('several gigabytes').waitFor();
  await button().click();
  await screen.getByText('Downloading the language model: 40%').waitFor();
  await screen.getByRole('button', { name: 'Cancel' }).click();
  await untilEnabled();

  offerModel({ neverAnswers: true });
  await open();
  await button().click();
  await screen.getByText('Writing the draft…').waitFor();
  await expect.poll(() => FakeLanguageModel.prompts.length).toBe(1);
  await screen.getByRole('button', { name: 'Cancel' }).click();
  await untilEnabled();
  await expect.poll(() => FakeLanguageModel.open).toBe(0);
  expect(passage()).toBe(false);
});

test('a draft that cannot be saved is a fault of ours, and the words to use stay', async () => {
  offerModel({ answers: [good] });
  await open();
  await screen.locator('#begin-topic').fill('hat');
  const put = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
    throw new Error('the disk is full');
  });
  await button().click();
  await screen.locator('.note-wrong').filter({ hasText: 'the disk is full' }).waitFor();
  expect(await screen.locator('#begin-topic').inputValue()).toBe('hat');
  put.mockRestore();
});
