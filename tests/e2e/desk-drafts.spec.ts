import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { axeFaults } from './axe-faults.ts';
import { startBrowser, type TestBrowser } from './browser.ts';
import { clearKept } from './clear-kept.ts';
import { type StandIn, standIn } from './stand-in-model.ts';

let browser: TestBrowser;

beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser?.close());
beforeEach(() => clearKept(browser));

async function openDesk(model?: StandIn): Promise<Page> {
  const page = await browser.context.newPage();
  if (model) await standIn(page, model);
  await page.goto(browser.inside('desk.html'));
  return page;
}

async function put(desk: Page, text: string): Promise<void> {
  await desk.getByLabel('Text', { exact: true }).fill(text);
  await desk.getByRole('button', { name: 'Make a passage' }).click();
  await desk.waitForSelector('.desk-beyond');
  await desk.getByText('Rewrite with the browser’s model').click();
}

const words = async (desk: Page) => (await desk.locator('.cm-line').allTextContents()).join('\n');
const answer = (...candidates: string[]): string => JSON.stringify({ candidates });

async function expectSound(desk: Page): Promise<void> {
  for (const colorScheme of ['light', 'dark'] as const) {
    await desk.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    await desk.setViewportSize({ width: 360, height: 800 });
    expect(await axeFaults(desk)).toEqual([]);
    expect(await desk.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
  }
  await desk.setViewportSize({ width: 1280, height: 900 });
}

const text = 'Bram purchased a lantern and went to the shed.\nNobody observed the ferry.';

describe('rewriting', () => {
  test('is not offered in a browser without a model, and the desk says so in one line', async () => {
    const desk = await openDesk();
    const state = await desk.evaluate(() =>
      typeof LanguageModel === 'undefined' ? 'none' : LanguageModel.availability(),
    );
    expect(state).toBe('unavailable');
    await put(desk, text);
    await desk.getByText('This browser has no language model of its own.').waitFor();
    expect(await desk.getByRole('button', { name: 'Rewrite for this group' }).count()).toBe(0);
    await expectSound(desk);
  });

  test('shows only rewritings that pass, and changes the text when one is chosen', async () => {
    const desk = await openDesk({
      state: 'available',
      answers: [
        answer(
          'Bram got a lamp and went to the shed.',
          'Bram got a lamp and went to the shed.<img src=x>',
          'Otto got 5 lamps and went to the shed.',
        ),
        'I cannot do that.',
      ],
    });
    await put(desk, text);
    await desk.getByRole('button', { name: 'Rewrite for this group' }).click();
    await desk.getByText('The plan has rewritings for 1 sentence.').waitFor();
    const rewriting = desk.getByLabel('Rewrite as', { exact: false }).first();
    expect(await rewriting.getAttribute('aria-label')).toBe(
      'Rewrite as “Bram got a lamp and went to the shed.”',
    );
    expect(await rewriting.isChecked()).toBe(false);
    await expectSound(desk);
    await rewriting.check();
    await desk.getByRole('button', { name: 'Make ticked changes' }).click();
    await expect.poll(() => words(desk)).toContain('Bram got a lamp and went to the shed.');
    await desk.keyboard.press('Control+z');
    await expect.poll(() => words(desk)).toContain('Bram purchased a lantern');
  });

  test('of one sentence uses the sentence with the cursor', async () => {
    const desk = await openDesk({ state: 'available', answers: [answer('Nobody saw the ship.')] });
    await put(desk, `# Late\n${text}`);
    expect(await desk.getByRole('button', { name: 'Rewrite sentence' }).isDisabled()).toBe(true);
    await desk.locator('.desk-beyond', { hasText: 'observed' }).click();
    await desk.getByRole('button', { name: 'Rewrite sentence' }).click();
    await desk.getByLabel('Rewrite as “Nobody saw the ship.”').first().waitFor();
  });

  test('shows the progress of a download, and can be cancelled while the model does not answer', async () => {
    const desk = await openDesk({
      state: 'downloadable',
      answers: ['never'],
      download: [0.4],
      neverLoads: true,
    });
    await put(desk, text);
    await desk.getByText('several gigabytes').waitFor();
    await desk.getByRole('button', { name: 'Rewrite for this group' }).click();
    await desk.getByText('Downloading the language model: 40%').waitFor();
    await desk.getByRole('button', { name: 'Cancel' }).click();
    await expect
      .poll(() => desk.getByRole('button', { name: 'Rewrite for this group' }).isEnabled())
      .toBe(true);

    const silent = await openDesk({ state: 'available', answers: ['never'] });
    await put(silent, text);
    await silent.getByRole('button', { name: 'Rewrite for this group' }).click();
    await silent.getByText('Rewriting sentence 1 of 2…').waitFor();
    await silent.getByRole('button', { name: 'Cancel' }).click();
    await expect.poll(() => silent.getByText('Rewriting sentence 1 of 2…').count()).toBe(0);
    expect(await words(silent)).toBe(text);
  });
});

test('a draft for the group is decodable and says that it is a draft', async () => {
  const desk = await openDesk();
  await desk.getByLabel('Words to use (optional)').fill('crab, lighthouse');
  await expectSound(desk);
  await desk.getByRole('button', { name: 'Write a draft for me' }).click();
  await desk.getByText('This is a draft made from sentence frames').waitFor();
  await desk.getByText(/Not used: .*lighthouse/).waitFor();
  await expect.poll(async () => (await words(desk)).split(/\s+/).length).toBeGreaterThanOrEqual(60);
  await desk.waitForSelector('.reach-figure');
  expect(await desk.locator('.desk-beyond').count()).toBe(0);
});

describe('a draft by the browser’s model', () => {
  const unfold = async (desk: Page): Promise<void> =>
    desk.getByText('Write it with the browser’s model').click();
  const story = (...more: string[]): string =>
    JSON.stringify({
      drafts: [
        {
          title: 'The Red Hat',
          paragraphs: [
            '{one} and {other} sat {place}. {one} had a bag. In the bag was a big red hat. {other} had a bag as well. In it was a bun.',
            'A cat ran up. It got the hat! It ran and ran. {one} ran and got it. The hat was a mess.',
            'But the cat was thin and sad. {other} got the bun and let the cat have a bit. The cat sat on the hat and had a nap.',
            ...more,
          ],
        },
      ],
    });

  test('is not offered in a browser without a model, and the desk says so in one line', async () => {
    const desk = await openDesk();
    await unfold(desk);
    await desk.getByText('This browser has no language model of its own.').waitFor();
    expect(await desk.getByRole('button', { name: 'Write the draft' }).count()).toBe(0);
    await expectSound(desk);
  });

  test('is opened once every word in it is readable, and says that it is a draft', async () => {
    const desk = await openDesk({
      state: 'available',
      answers: [story('It was an enormous lighthouse.'), story()],
    });
    await unfold(desk);
    await desk.getByRole('button', { name: 'Write the draft' }).waitFor();
    await expectSound(desk);
    await desk.getByRole('button', { name: 'Write the draft' }).click();
    await desk.getByText('This is a draft by the browser’s language model').waitFor();
    await expect.poll(() => words(desk)).toContain('had a nap.');
    expect(await words(desk)).not.toContain('lighthouse');
    await desk.waitForSelector('.reach-figure');
    expect(await desk.locator('.desk-beyond').count()).toBe(0);
  });

  test('is not made where nothing passes: one line says so, and the frames write one', async () => {
    const desk = await openDesk({
      state: 'available',
      answers: [JSON.stringify({ drafts: [{ title: 'x', paragraphs: ['<img src=x onerror=alert(1)>'] }] })],
    });
    await unfold(desk);
    await desk.getByRole('button', { name: 'Write the draft' }).click();
    await desk.getByText('wrote no draft that passes the checks').waitFor();
    await expectSound(desk);
    await desk.getByRole('button', { name: 'Write a draft for me' }).click();
    await desk.getByText('This is a draft made from sentence frames').waitFor();
  });

  test('can be cancelled while the model does not answer', async () => {
    const desk = await openDesk({ state: 'downloadable', answers: ['never'], download: [0.4] });
    await unfold(desk);
    await desk.getByText('several gigabytes').waitFor();
    await desk.getByRole('button', { name: 'Write the draft' }).click();
    await desk.getByText('Writing the draft…').waitFor();
    await desk.getByRole('button', { name: 'Cancel' }).click();
    await expect.poll(() => desk.getByRole('button', { name: 'Write the draft' }).isEnabled()).toBe(true);
    expect(new URL(desk.url()).hash).not.toContain('passage');
  });
});
