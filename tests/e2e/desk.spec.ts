import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { axeFaults } from './axe-faults.ts';
import { onlyIn, startBrowser, startOwnBrowser, type TestBrowser } from './browser.ts';
import { clearKept } from './clear-kept.ts';

let browser: TestBrowser;
let desk: Page;

beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser?.close());
beforeEach(async () => {
  await clearKept(browser);
  desk = await openDesk();
});

async function openDesk(hash = ''): Promise<Page> {
  const page = await browser.context.newPage();
  await page.goto(browser.inside(`desk.html${hash}`));
  return page;
}

const text = [
  '# The ferry is late',
  'Bram purchased a lantern and went to the shed.',
  '- ropes',
  'Nobody observed the ferry.',
].join('\n');

async function put(passage = text): Promise<void> {
  await desk.getByLabel('Text', { exact: true }).fill(passage);
  await desk.getByRole('button', { name: 'Make a passage' }).click();
  await desk.waitForSelector('.desk-beyond');
}

const field = () => desk.getByRole('textbox', { name: /^Text for/ });
const shaded = () => desk.locator('.desk-beyond').allTextContents();
const reach = async () => Number.parseFloat((await desk.locator('.reach-figure').textContent()) ?? '');
const words = async () => (await desk.locator('.cm-line').allTextContents()).join('\n');

async function expectSound(): Promise<void> {
  for (const colorScheme of ['light', 'dark'] as const) {
    await desk.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    await desk.setViewportSize({ width: 360, height: 800 });
    expect(await axeFaults(desk)).toEqual([]);
    expect(await desk.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
  }
  await desk.setViewportSize({ width: 1280, height: 900 });
}

describe('a passage', () => {
  test('is shaded for the group, and shaded again while it is edited', async () => {
    await put();
    expect(await shaded()).toEqual(expect.arrayContaining(['purchased', 'lantern', 'observed', 'ferry']));
    expect(await shaded()).not.toContain('Bram');
    const before = await reach();
    await field().press('Control+End');
    await field().pressSequentially(' A lighthouse.');
    await expect.poll(shaded).toContain('lighthouse');
    await expect.poll(reach).toBeLessThan(before);
    await expectSound();
  });

  test('has a cursor that blinks again when typing rests', async () => {
    await put();
    await field().press('Control+End');
    await desk.evaluate(() => {
      const seen: boolean[] = [];
      Object.assign(window, { blinks: seen });
      new MutationObserver(() =>
        seen.push(getComputedStyle(document.querySelector('.cm-cursorLayer')!).animationName !== 'none'),
      ).observe(document.querySelector('.desk-field')!, { attributeFilter: ['class'] });
    });
    await desk.keyboard.type('s');
    await expect
      .poll(() => desk.evaluate(() => (window as unknown as { blinks: boolean[] }).blinks))
      .toEqual([false, true]);
  });

  test('can be edited by keyboard: go to the next hard word, swap it, undo', async () => {
    await put();
    await field().focus();
    await desk.keyboard.press('Tab');
    const word = desk.getByRole('region', { name: /^The word/ });
    expect(await word.getAttribute('aria-label')).toBe('The word ferry');
    await desk.keyboard.press('Tab');
    await desk.getByRole('region', { name: 'The word purchased' }).waitFor();
    await desk.getByRole('button', { name: 'got', exact: true }).click();
    await expect.poll(words).toContain('Bram got a lantern');
    await desk.keyboard.press('Control+z');
    await expect.poll(words).toContain('Bram purchased a lantern');
    await desk.keyboard.press('Shift+Tab');
    await desk.keyboard.press('Escape');
    await desk.keyboard.press('Tab');
    expect(await desk.evaluate(() => document.activeElement?.closest('.cm-editor'))).toBeNull();
  });

  test('goes from pasted text to paper by keyboard alone, with a search, a swap, a plan and a print', async () => {
    const tabTo = async (name: string): Promise<void> => {
      for (let presses = 0; presses < 80; presses++) {
        await desk.keyboard.press('Tab');
        const focused = await desk.evaluate(
          () =>
            document.activeElement?.getAttribute('aria-label') ?? document.activeElement?.textContent?.trim(),
        );
        if (focused === name) return;
      }
      throw new Error(`Tab never came to “${name}”.`);
    };
    await desk.getByLabel('Text', { exact: true }).focus();
    await desk.keyboard.insertText(text);
    await tabTo('Make a passage');
    await desk.keyboard.press('Enter');
    await desk.waitForSelector('.desk-beyond');

    await field().focus();
    await desk.keyboard.press('Control+f');
    await desk.keyboard.type('observed');
    await desk.keyboard.press('Enter');
    await desk.keyboard.press('Escape');
    expect(await desk.evaluate(() => String(getSelection()))).toBe('observed');
    await desk.keyboard.type('saw');
    await expect.poll(words).toContain('Nobody saw the ferry.');

    await desk.keyboard.press('Control+Home');
    await desk.keyboard.press('Tab');
    await desk.keyboard.press('Tab');
    await desk.getByRole('region', { name: 'The word purchased' }).waitFor();
    await desk.keyboard.press('Escape');
    await tabTo('got');
    await desk.keyboard.press('Enter');
    await expect.poll(words).toContain('Bram got a lantern');

    // Pressing Escape and then Tab moves the focus out of the text.
    await desk.keyboard.press('Escape');
    await tabTo('Plan changes');
    await desk.keyboard.press('Enter');
    await tabTo('Propose changes');
    await desk.keyboard.press('Enter');
    await desk.getByRole('button', { name: 'Tick all' }).waitFor();
    await expect.poll(() => desk.evaluate(() => document.activeElement?.id)).toBe('plan-distance');
    await tabTo('Tick all');
    await desk.keyboard.press('Enter');
    await desk.keyboard.press('Shift+Tab');
    await desk.keyboard.press('Enter');
    await expect.poll(reach).toBeGreaterThanOrEqual(95);

    await desk.getByRole('button', { name: 'Print…' }).focus();
    await desk.keyboard.press('Enter');
    await desk.getByRole('heading', { name: 'Print', exact: true }).waitFor();
    expect(await desk.locator('.sheet-paper').first().textContent()).toContain('Bram got a lamp');
    await desk.keyboard.press('Escape');
    await expect.poll(() => desk.evaluate(() => document.activeElement?.textContent)).toBe('Print…');
  });

  test('gets the right article, a or an, when a word is swapped', async () => {
    await put('Bram saw an enormous dog. It had a bone.');
    await desk.locator('.desk-beyond').filter({ hasText: 'enormous' }).click();
    await desk.getByRole('button', { name: 'big', exact: true }).click();
    await expect.poll(words).toBe('Bram saw a big dog. It had a bone.');
    await desk.keyboard.press('Control+z');
    await expect.poll(words).toBe('Bram saw an enormous dog. It had a bone.');
  });

  test('counts a story word as known, and keeps its meaning', async () => {
    await put();
    const before = await reach();
    await desk.locator('.desk-beyond').filter({ hasText: 'lantern' }).click();
    // The suggested explanation of the word loads together with its replacement words.
    await desk.locator('.desk-word .swap').first().waitFor();
    await desk.getByRole('button', { name: 'Pre-teach this word' }).click();
    await expect.poll(reach).toBeGreaterThan(before);
    await expect.poll(shaded).not.toContain('lantern');
    expect(await desk.locator('.desk-pre-teach').allTextContents()).toEqual(['lantern']);
    expect(await desk.getByLabel('lantern', { exact: true }).inputValue(), 'to begin with').toBe('lamp');
    await desk.getByLabel('lantern', { exact: true }).fill('a lamp you can carry');
    await expectSound();
    await expect
      .poll(async () => (await stored())[0]?.versions)
      .toMatchObject({
        herons: { storyWords: [{ word: 'lantern', meaning: 'a lamp you can carry' }] },
      });
  });

  test('has a version for each group, and can be compared with the original text', async () => {
    await put();
    await field().press('Control+End');
    await field().pressSequentially(' He ran.');
    await desk.getByLabel('Group', { exact: true }).selectOption('Plovers');
    await expect.poll(words).not.toContain('He ran.');
    await desk.getByLabel('Group', { exact: true }).selectOption('Herons');
    await expect.poll(words).toContain('He ran.');
    await desk.getByLabel('compare with').selectOption('the original text');
    expect(await desk.locator('ins').allTextContents()).toEqual([' He ran.']);
    await expectSound();
  });

  test('lists for each version its words, its reach, and how often it practises the group’s step', async () => {
    await put('Bram fed ropes to a lantern. The rope is red.');
    await field().press('Control+End');
    await field().pressSequentially(' His ropes ran.');
    await desk.getByText('Versions and practice').click();
    const rows = desk.locator('.versions tbody tr');
    await expect.poll(() => rows.count()).toBe(2);
    const cells = (n: number) => rows.nth(n).locator('th, td').allTextContents();
    const [asFound, herons] = [await cells(0), await cells(1)];
    expect(asFound.slice(0, 2)).toEqual(['Original text', '10']);
    expect(herons.slice(0, 2)).toEqual(['Herons', '13']);
    expect(Number.parseInt(herons[3]!, 10)).toBe(Number.parseInt(asFound[3]!, 10) + 1);
    expect(herons[3]).toMatch(/\w+ as in \w+: \d+ words/);
    await desk.getByLabel('Group', { exact: true }).selectOption('Plovers');
    await field().press('Control+End');
    await field().pressSequentially(' Mud.');
    await expect.poll(() => rows.count()).toBe(3);
    await expectSound();
    await rows.getByRole('button', { name: 'Herons' }).click();
    await expect.poll(words).toContain('His ropes ran.');
    await desk.getByLabel('compare with').selectOption('the text for Plovers');
    expect(await desk.locator('.compare section > .quiet').allTextContents()).toEqual([
      expect.stringMatching(/^11 words; \d+ practise/),
      expect.stringMatching(/^13 words; \d+ practise/),
    ]);
  });

  test('is brought to a target by the ticked changes alone', async () => {
    await put();
    const before = await words();
    await desk.getByText('Plan changes', { exact: true }).click();
    await desk.getByLabel('Readable at least').selectOption('every word');
    await desk.getByLabel('Pre-teach at most').selectOption('2 words');
    await desk.getByRole('button', { name: 'Propose changes' }).click();
    const review = desk.getByRole('region', { name: /^(?:Near|Some way|Too far)/ });
    const changes = review.getByRole('checkbox');
    await changes.first().waitFor();
    const names = await changes.evaluateAll((all) => all.map((one) => one.getAttribute('aria-label') ?? ''));
    expect(new Set(names.filter((name) => /^Pre-teach/.test(name))).size).toBeLessThanOrEqual(2);
    expect(await words(), 'nothing is changed yet').toBe(before);
    await expectSound();
    const swap = review.getByRole('checkbox', { name: 'Replace “purchased” with “got”' });
    const result = async () => (await review.getByRole('region', { name: 'After' }).textContent()) ?? '';
    expect(await swap.isChecked(), 'a recommended word is ticked at once').toBe(true);
    expect(await result()).toContain('Bram got a');
    // The test refuses every change by key. It then accepts the swap again.
    for (const change of await changes.all()) {
      await change.focus();
      await desk.keyboard.press('r');
      expect(await change.isChecked()).toBe(false);
    }
    expect(await result()).toContain('Bram purchased a');
    await swap.focus();
    await desk.keyboard.press('a');
    expect(await swap.isChecked()).toBe(true);
    if (names.length > 1)
      expect(await swap.evaluate((one) => one === document.activeElement), 'it goes on to the next').toBe(
        false,
      );
    await swap.focus();
    await desk.keyboard.press('Space');
    expect(await swap.isChecked()).toBe(false);
    await review.getByText('purchased', { exact: true }).click();
    expect(await swap.isChecked()).toBe(true);
    await desk.getByRole('button', { name: 'Make ticked changes' }).click();
    await expect.poll(words).toBe(before.replace('purchased', 'got'));
    await field().press('Control+z');
    await expect.poll(words).toBe(before);
  });

  test('is shortened by the plan, and one undo restores it and removes its words to pre-teach', async () => {
    await put('The ferry was late.\nUnfortunately, the ferry was late, and Bram observed the fog.');
    const before = await words();
    await desk.getByText('Plan changes', { exact: true }).click();
    await desk.getByLabel('Readable at least').selectOption('every word');
    await desk.getByLabel('Sentences of at most').selectOption('8 words');
    await desk.getByRole('button', { name: 'Propose changes' }).click();
    await desk.getByRole('button', { name: 'Tick all' }).click();
    await desk.getByRole('button', { name: 'Make ticked changes' }).click();
    await expect.poll(words).toMatch(/The ferry was late\. Bram \w+ the fog\.$/);
    const taught = desk.locator('.story-word');
    expect(await taught.allTextContents()).toContain('ferry');
    await field().press('Control+z');
    await expect.poll(words).toBe(before);
    await expect.poll(() => taught.count()).toBe(0);
    await field().press('Control+y');
    await expect.poll(() => taught.count()).toBeGreaterThan(0);
  });

  test('that is too far for the group is reported as such, with other ways offered', async () => {
    await put('Enormous squalls devastated the harbour.\nEveryone despaired.');
    await desk.getByText('Plan changes', { exact: true }).click();
    await desk.getByLabel('Pre-teach at most').selectOption('0 words');
    await desk.getByRole('button', { name: 'Propose changes' }).click();
    await desk.getByRole('heading', { name: /^Too far for this group: at most \d of 2/ }).waitFor();
    await expectSound();
    await desk.getByRole('button', { name: 'Rewrite it' }).click();
    await expect.poll(() => desk.evaluate(() => String(getSelection()))).toBe('Enormous');
  });

  test('shows which sentences are longer than the chosen length', async () => {
    await put();
    await desk.getByLabel('Flag long sentences').selectOption('over 8 words');
    await desk.getByText('one sentence').waitFor();
    await expect
      .poll(async () => (await desk.locator('.desk-long').allTextContents()).join(''))
      .toContain('Bram');
  });
});

/** Returns lines of letters that storage cannot compress, made by a fixed pseudo-random sequence (Lehmer). */
function makeNoise(length: number): string {
  let state = 20261125;
  return Array.from({ length }, (_, i) => {
    state = (state * 48271) % 2147483647;
    if (i % 400 === 399) return '\n';
    return i % 6 === 5 ? ' ' : String.fromCharCode(97 + (state % 26));
  }).join('');
}

async function stored(): Promise<
  { title: string; original: string; versions: Record<string, { text: string }> }[]
> {
  return desk.evaluate(
    () =>
      new Promise((resolve, reject) => {
        const opening = indexedDB.open('desk');
        opening.onerror = reject;
        opening.onsuccess = () => {
          const asking = opening.result.transaction('passages').objectStore('passages').getAll();
          asking.onsuccess = () => {
            resolve(asking.result);
            opening.result.close();
          };
        };
      }),
  );
}

describe('a saved passage', () => {
  test('is still there after its window was closed at once', async () => {
    await put();
    const address = desk.url();
    await field().press('Control+End');
    await field().pressSequentially(' Calm.');
    await desk.close({ runBeforeUnload: true });
    desk = await openDesk(new URL(address).hash);
    await expect.poll(words).toContain('Calm.');
  });

  test('keeps the edits of two windows as two versions', async () => {
    await put();
    const other = await openDesk(new URL(desk.url()).hash);
    await other.waitForSelector('.desk-beyond');
    await field().press('Control+End');
    await field().pressSequentially(' From one.');
    await expect.poll(async () => JSON.stringify(await stored())).toContain('From one.');
    const there = other.getByRole('textbox', { name: /^Text for/ });
    await there.press('Control+End');
    await there.pressSequentially(' From two.');
    await other.getByText('Both versions are kept').waitFor();
    const texts = async (): Promise<string[]> =>
      (await stored()).map(({ title, versions }) => `${title}: ${versions.herons?.text.slice(-10)}`).sort();
    // Both versions are saved before the last letters are.
    await expect
      .poll(texts)
      .toEqual([
        expect.stringMatching(/late \(other window\): +From two\.$/),
        expect.stringMatching(/late: +From one\.$/),
      ]);
  });

  onlyIn('chromium', 'new tabs and downloads')(
    'all passages are saved in a file, and added from it again',
    async () => {
      await put();
      await field().press('Control+End');
      await field().pressSequentially(' Calm.');
      await expect.poll(async () => JSON.stringify(await stored())).toContain('Calm.');
      await desk.getByText('All passages').click();
      const [download] = await Promise.all([
        desk.waitForEvent('download'),
        desk.getByRole('button', { name: 'Save all to file' }).click(),
      ]);
      const file = readFileSync(await download.path(), 'utf8');
      const give = (text: string) =>
        desk.getByLabel('Choose a file, or drop it here').setInputFiles({
          name: 'passages.jsonl',
          mimeType: 'application/jsonl',
          buffer: Buffer.from(text),
        });
      await give(file);
      await desk.getByText('You already have everything in this file.').waitFor();
      await field().press('Control+End');
      await field().pressSequentially(' Wind.');
      await expect.poll(async () => JSON.stringify(await stored())).toContain('Wind.');
      await give(file);
      await desk.getByRole('button', { name: 'Keep both' }).click();
      await desk.getByText('Added: 1 passage.').waitFor();
      const both = await stored();
      expect(both.map(({ versions }) => JSON.stringify(versions).includes('Wind.')).toSorted()).toEqual([
        false,
        true,
      ]);
      await give('{');
      await desk.getByText(/Nothing was changed/).waitFor();
      expect((await stored()).length).toBe(2);
      await expectSound();
    },
  );

  onlyIn('chromium', 'debugging protocol')(
    'a full storage is told, and nothing is lost: in a file, after a reload, and once there is room',
    async () => {
      // The test starts a new browser, which has not yet asked for the storage quota. The answer is cached for half a
      // minute.
      const own = await startOwnBrowser();
      const before = desk;
      desk = await own.open(own.inside('groups.html'));
      const devtools = await own.context.newCDPSession(desk);
      const origin = `chrome-extension://${own.id}`;
      const { usage } = await devtools.send('Storage.getUsageAndQuota', { origin });
      await devtools.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: usage + 60_000 });
      await desk.goto(own.inside('desk.html'));
      const errors: string[] = [];
      desk.on('pageerror', (error) => errors.push(error.message));
      const told = desk.getByRole('alert').getByText('the browser’s storage is full');
      await put();

      const big = makeNoise(90_000);
      await field().press('Control+End');
      await field().evaluate((element, big) => {
        const data = new DataTransfer();
        data.setData('text/plain', big);
        element.dispatchEvent(
          new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true }),
        );
      }, big);
      await field().pressSequentially(' Calm.');
      await told.waitFor();
      expect(await words()).toContain('Calm.');
      expect(JSON.stringify(await stored())).not.toContain('Calm.');

      await desk.getByText('All passages').click();
      const [download] = await Promise.all([
        desk.waitForEvent('download'),
        desk.getByRole('button', { name: 'Save all to file' }).click(),
      ]);
      expect(readFileSync(await download.path(), 'utf8')).toContain('Calm.');

      await desk.reload();
      await told.waitFor();
      await field().press('Control+End');
      await field().pressSequentially(' Cold.');
      expect(await words()).toContain('Calm. Cold.');
      await devtools.send('Storage.overrideQuotaForOrigin', { origin });
      await desk.evaluate(() => dispatchEvent(new Event('focus')));
      await told.waitFor({ state: 'detached' });
      await expect.poll(async () => JSON.stringify(await stored())).toContain('Calm. Cold.');
      await desk.reload();
      await field().press('Control+End');
      await expect.poll(words).toContain('Calm. Cold.');
      expect((await stored()).length).toBe(1);
      expect(await desk.evaluate(() => Object.keys(localStorage).filter((key) => /draft/.test(key)))).toEqual(
        [],
      );
      expect(errors).toEqual([]);
      await own.close();
      desk = before;
    },
  );

  test('is deleted once the deletion is confirmed', async () => {
    await put();
    await desk.getByText('Add source').click();
    await desk.getByRole('button', { name: 'Delete this passage' }).click();
    await desk.getByRole('button', { name: 'Delete', exact: true }).click();
    await desk.getByRole('heading', { name: 'New passage' }).waitFor();
    expect(await stored()).toEqual([]);
  });
});

describe('a text comes from', () => {
  onlyIn('chromium', 'pasting by script')('a rich paste into the passage, line for line', async () => {
    await put('Calm sea.\nA lighthouse.');
    await field().press('Control+Home');
    await field().evaluate((element) => {
      const data = new DataTransfer();
      data.setData('text/html', '<h2>Nets</h2><p>A <b>big</b> net</p>');
      data.setData('text/plain', 'not this');
      element.dispatchEvent(
        new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true }),
      );
    });
    await expect.poll(words).toBe('## Nets\nA big netCalm sea.\nA lighthouse.');
    await desk.keyboard.press('Control+z');
    await expect.poll(words).toBe('Calm sea.\nA lighthouse.');
  });

  onlyIn('chromium', 'new tabs and downloads')(
    'a page, with its headings, lists and source, the pictures told',
    async () => {
      const story = browser.serve(
        'found.html',
        `<title>The Ferry Comes In Late</title><nav>Yachts</nav><main><h1>The Ferry Comes In Late</h1>
       <p class="byline">By Wilma Falk</p>
       ${'<p>The ferry came in <b>late</b> that night<sup>1</sup>, and the crew had to tie her up in the dark.</p>'.repeat(9)}
       <img width="300" height="200" alt="" src="data:image/gif;base64,R0lGODlhAQABAAAAACw=">
       <h2>What they had</h2><ul><li>rope<li>nets</ul><p>They tied her up at the old wall and went home to bed.</p></main>`,
      );
      const page = await browser.open(story);
      await browser.press(page);
      await page.waitForFunction(() => CSS.highlights.size > 0);
      const panel = await browser.openPanel(page);
      const opening = browser.context.waitForEvent('page');
      await panel.getByRole('link', { name: 'Edit this text' }).click();
      desk = await opening;
      await desk.waitForSelector('.desk-beyond');
      const [passage] = await stored();
      expect(passage!.title).toBe('The Ferry Comes In Late');
      const lines = passage!.original.split('\n');
      expect(lines[0]).toBe('# The Ferry Comes In Late');
      expect(lines).toContain(
        'The ferry came in late that night, and the crew had to tie her up in the dark.',
      );
      expect(lines.slice(-4)).toEqual([
        '## What they had',
        '- rope',
        '- nets',
        'They tied her up at the old wall and went home to bed.',
      ]);
      expect(passage!.original).not.toContain('Yachts');
      await desk.getByText('One picture was left out.').waitFor();
      expect(await desk.locator('main summary').filter({ hasText: 'Source' }).textContent()).toContain(story);
      await desk.reload();
      expect((await stored()).length).toBe(1);
    },
  );

  onlyIn('chromium', 'new tabs and downloads')(
    'a swap pressed in the panel, made in the passage and undone there; the same page lies on the desk once',
    async () => {
      const page = await browser.open(
        browser.serve('lamp.html', '<title>A Lamp</title><p>Bram purchased a lamp. Wilma purchased a net.'),
      );
      await browser.press(page);
      await page.waitForFunction(() => CSS.highlights.size > 0);
      const panel = await browser.openPanel(page);
      await panel.getByRole('button', { name: 'purchased', exact: true }).first().click();
      for (const n of [1, 2]) {
        const opening = browser.context.waitForEvent('page');
        await panel.getByRole('link', { name: 'got', exact: true }).click();
        desk = await opening;
        await desk.waitForSelector('.cm-line');
        await expect.poll(words).toBe('Bram got a lamp. Wilma got a net.');
        expect(await desk.evaluate(() => location.hash)).toMatch(/^#passage\/[\w-]+$/);
        if (n === 1) {
          await desk.keyboard.press('Control+z');
          await expect.poll(words).toBe('Bram purchased a lamp. Wilma purchased a net.');
          await expect.poll(async () => JSON.stringify(await stored())).toContain('purchased a net');
          await desk.close();
        }
      }
      expect((await stored()).length).toBe(1);
    },
  );

  onlyIn('chromium', 'pasting by script')('rich text that is pasted, without what is not text', async () => {
    await desk.getByLabel('Text', { exact: true }).evaluate((element) => {
      const data = new DataTransfer();
      data.setData(
        'text/html',
        '<h2>Nets</h2><p>A <b>big</b> net<script>x()</script></p><ul><li>one<li>two</ul>',
      );
      element.dispatchEvent(
        new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true }),
      );
    });
    expect(await desk.getByLabel('Text', { exact: true }).inputValue()).toBe(
      '## Nets\nA big net\n- one\n- two',
    );
    await expectSound();
  });
});
