import { readFile } from 'node:fs/promises';
import fc from 'fast-check';
import mammoth from 'mammoth';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { cleanText } from '../../src/passage/print/clean-text.ts';
import { makeSheet, plainContent } from '../../src/passage/print/make-sheet.ts';
import { usualChoices } from '../../src/passage/print/sheet-choices.ts';
import { writeHtml } from '../../src/passage/print/write-html.ts';
import { axeFaults } from './axe-faults.ts';
import { startBrowser, type TestBrowser } from './browser.ts';
import { clearKept } from './clear-kept.ts';
import { nastyText } from './nasty-text.ts';
import { type PdfPage, readPdf } from './read-pdf.ts';

let browser: TestBrowser;
let desk: Page;

beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser?.close());
beforeEach(async () => {
  await clearKept(browser);
  desk = await browser.open(browser.inside('desk.html'));
});

const story = [
  '# The ferry is late',
  'Bram ran to the dock with a lantern, and the wind was so strong that the well-kept flag on the Marigold ripped in half. “Is she in yet?” he said.',
  'Otto had left 40 nets — and a big tin of jam — on the path.',
  '## In the shed',
  '- ropes and nets, and a big old map of all of the harbour that hangs on a rusty nail',
  '- a lamp',
  'Nobody saw the ferry for a long time. The mist was so thick that the lamp on the rock was not to be seen.',
].join('\n');
const source = 'Source: Wilma Falk, https://tarn-quay.example/news?a=1&b=2';

async function put(text = story): Promise<void> {
  await desk.getByLabel('Text', { exact: true }).fill(text);
  await desk.getByRole('button', { name: 'Make a passage' }).click();
  await desk.waitForSelector('.desk-beyond');
}

async function addSource(): Promise<void> {
  await desk.getByText('Add source').click();
  await desk.getByLabel('Author', { exact: true }).fill('Wilma Falk');
  await desk.getByLabel('Web address', { exact: true }).fill('https://tarn-quay.example/news?a=1&b=2');
}

async function addStoryWord(word: string, meaning: string): Promise<void> {
  await desk.locator('.desk-beyond').filter({ hasText: word }).first().click();
  await desk.getByRole('button', { name: 'Pre-teach this word' }).click();
  await desk.getByLabel(word, { exact: true }).fill(meaning);
}

const openPrint = () => desk.getByRole('button', { name: 'Print…' }).click();
const choose = (label: string, option: string) =>
  desk.getByRole('combobox', { name: label, exact: true }).selectOption(option);
const toPdf = async () => readPdf(await desk.pdf({ preferCSSPageSize: true }));
const linesOf = (pages: readonly PdfPage[]) => pages.flatMap(({ lines }) => lines);
const sheet = () => desk.locator('.sheet-paper');

const body = story
  .split('\n')
  .filter((line) => !line.startsWith('#'))
  .map((line) => line.replace('- ', ''))
  .join(' ');

/**
 * Counts the words in the first `letters` letters of the text, as a teacher counts words with a finger. A word that
 * begins there counts.
 */
function fingerCount(letters: number): number {
  let at = 0;
  let words = 0;
  for (const piece of body.split(' ')) {
    if (at < letters && /[a-z\d]/i.test(piece)) words++;
    at += piece.length;
  }
  return words;
}

describe('a printed passage', () => {
  test('has all its parts and nothing else of the desk, even if the print view was never opened', async () => {
    await put();
    await addSource();
    await addStoryWord('lantern', 'a lamp you can carry');
    const pages = await toPdf();
    const text = pages.flatMap(({ lines }, i) => {
      const written = lines.map(({ text }) => text);
      expect(written.pop()).toBe(i === 0 ? source : `${source}${i + 1}`);
      return written;
    });
    expect(text[0]).toBe('The ferry is late');
    expect(text[1]).toBe('Name Date');
    expect(text[2]).toBe('Words to pre-teach');
    expect(text[3]!.replaceAll(' ', '')).toBe('lanternalampyoucancarry');
    const rest = text.slice(4).join(' ');
    expect(rest).toBe(
      `${story
        .split('\n')
        .slice(1)
        .map((line) => line.replace(/^(##|-) /, ''))
        .join(' ')}`,
    );
    // The test browser is set to American English, whose paper size is Letter.
    expect([Math.round(pages[0]!.width), Math.round(pages[0]!.height)]).toEqual([612, 792]);
  });

  test('has correct word counts beside its lines in any size, font and spacing', async () => {
    await put();
    await openPrint();
    await choose('Next to each line', 'counts');
    for (const [size, font, gaps, paper] of [
      ['18', 'beginner', 'usual', 'a4'],
      ['18', 'book', 'usual', 'a4'],
      ['26', 'wide', 'widest', 'letter'],
      ['14', 'plain', 'wider', 'a4'],
    ] as const) {
      const at = `${size} point ${font}, gaps ${gaps}, on ${paper}`;
      await choose('Size', size);
      await choose('Font', font);
      await choose('Letter and word spacing', gaps);
      await choose('Paper', paper);
      const pages = await toPdf();
      const counted = linesOf(pages).filter(({ number }) => number !== null);
      expect(counted.length, at).toBeGreaterThan(8);
      // pdf.js takes widely spaced letters for separate words. The comparison therefore leaves spaces out.
      const written = counted.map(({ text }) => text.replaceAll(' ', ''));
      expect(written.join(''), at).toBe(body.replaceAll(' ', ''));
      expect(
        counted.map(({ number }) => number),
        at,
      ).toEqual(written.map((_, i) => fingerCount(written.slice(0, i + 1).join('').length)));
      expect(Math.round(pages[0]!.width), at).toBe(paper === 'a4' ? 595 : 612);
      const heading = linesOf(pages).find(({ text }) => text.replaceAll(' ', '') === 'Intheshed');
      expect(heading!.number, at).toBeNull();
    }
    // The choice `numbers` numbers the lines from one, on the left.
    await choose('Next to each line', 'numbers');
    const numbers = linesOf(await toPdf()).flatMap(({ number }) => number ?? []);
    expect(numbers).toEqual(numbers.map((_, i) => i + 1));
    expect(numbers.length).toBeGreaterThan(8);
    const text = await desk.locator('.set-line').first().boundingBox();
    const number = await desk.locator('.set-number').first().boundingBox();
    expect(number!.x + number!.width).toBeLessThan(text!.x);
  });

  test('keeps each heading on the page of its text, and numbers its pages', async () => {
    const part = (_: unknown, i: number) => `## Part ${i}\n${'The ferry is in. '.repeat((i % 4) + 1).trim()}`;
    await put(Array.from({ length: 60 }, part).join('\n'));
    for (const margin of ['none', 'counts']) {
      await openPrint();
      await choose('Next to each line', margin);
      const pages = await toPdf();
      expect(pages.length).toBeGreaterThan(4);
      for (const [i, { lines }] of pages.entries()) {
        const text = lines.map(({ text }) => text);
        if (i > 0) expect(text.pop()).toBe(String(i + 1));
        expect(text.at(-1)).not.toMatch(/^Part/);
      }
      await desk.keyboard.press('Escape');
    }
  });

  const pieces = [
    'The ferry is in.',
    'Bram ran to the dock with a big lamp and a net, and Otto sat on the wall.',
  ];
  const long = (count: number) =>
    Array.from({ length: count }, (_, i) => {
      if (i % 9 === 4) return `## Part ${i}`;
      return `${i % 5 === 3 ? '- ' : ''}${`${pieces[i % 2]} `.repeat((i % 7) + 1).trim()}`;
    }).join('\n');
  const far = `https://tarn-quay.example/${'harbour-news/'.repeat(20)}`;
  const plain = (text: string) => text.replace(/\s/g, '');

  test.each([
    [31, 'a4', 'letter', '18', '18', 'none', 'none'],
    [60, 'a4', 'letter', '26', '14', 'counts', 'numbers'],
  ])(
    'of %i parts has the same pages on screen and on paper, each with the source at its foot',
    async (parts, ...[a4, letter, large, small, first, then]) => {
      await put(long(parts));
      await addSource();
      await desk.getByLabel('Web address', { exact: true }).fill(far);
      await openPrint();
      for (const [paper, size, margin] of [
        [a4, large, first],
        [letter, small, then],
      ] as const) {
        await choose('Size', size);
        await choose('Paper', paper);
        await choose('Next to each line', margin);
        await expectAsOnPaper(margin);
      }
    },
  );

  async function expectAsOnPaper(margin: string): Promise<void> {
    const shown = await desk.locator('.sheet-page').evaluateAll((pages) =>
      pages.map((page) => ({
        text: page.querySelector('.set-text')!.textContent!,
        // Whether all text of the page ends above the top of its foot.
        clear:
          page.querySelector('.set-text')!.getBoundingClientRect().bottom <=
          page.querySelector('.sheet-foot')!.getBoundingClientRect().top + 0.5,
      })),
    );
    const pages = await toPdf();
    expect(pages.length).toBeGreaterThan(2);
    expect(shown.length).toBe(pages.length);
    await desk.getByText(`${pages.length} pages.`).waitFor();
    for (const [i, { lines }] of pages.entries()) {
      const text = plain(lines.map(({ text }) => text).join(''));
      const numbered = (shown[i]!.text.match(/\S/g) ?? []).join('');
      const foot = `Source:WilmaFalk,${far}`;
      expect(shown[i]!.clear).toBe(true);
      const at = text.indexOf('Source:');
      expect(at).toBeGreaterThan(0);
      // The page number is beside the last line of the source.
      expect(text.slice(at)).toBe(i === 0 ? foot : foot + (i + 1));
      if (margin === 'none') expect(text.slice(0, at).endsWith(numbered)).toBe(true);
    }
  }

  test('continues a long list of story words in a box on the next page', async () => {
    await put('lantern lighthouse ferry harbour wind');
    await desk.getByText('All passages').click();
    const storyWords = Array.from({ length: 40 }, (_, i) => ({
      word: `word${i}`,
      meaning: 'a thing to carry in the dark when you go out to the end of the wall',
    }));
    const passage = {
      title: 'Many words',
      source: { url: null, byline: null, date: null },
      original: 'A lamp.',
      versions: { herons: { text: 'A lamp.', storyWords } },
    };
    await desk.getByLabel('Choose a file, or drop it here').setInputFiles({
      name: 'many.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify({ 'wordreach-passages': 1, passages: [passage] })),
    });
    await desk.getByRole('link', { name: 'Many words' }).click();
    await desk.getByRole('textbox', { name: 'word39' }).waitFor();
    await openPrint();
    const boxes = desk.locator('.sheet-box');
    const count = await desk.locator('.sheet-page').count();
    expect(count).toBeGreaterThan(1);
    expect((await toPdf()).length).toBe(count);
    expect(await boxes.count()).toBe(count);
    expect(await desk.locator('.sheet-box-label').count()).toBe(1);
    expect(await desk.locator('dt').count()).toBe(40);
  });

  test('has syllable dots, vowel marks and underlines when they are chosen', async () => {
    await put();
    await openPrint();
    expect(await sheet().textContent()).toContain('in half');
    await desk.getByLabel('Dots between syllables').check();
    expect(await sheet().textContent()).toContain('with a lan·tern');
    await desk.getByLabel('Long and short vowel marks').check();
    expect(await sheet().textContent()).toContain('wĭth a lăn·tern');
    expect(await sheet().locator('u').count()).toBe(0);
    await desk.getByLabel('Underline this step’s words').check();
    expect(await sheet().locator('u').allTextContents()).toEqual(['rōpes']);
  });
});

describe('the print view', () => {
  test('works by keyboard, remembers the chosen size, and returns to the desk', async () => {
    await put();
    await desk.getByRole('button', { name: 'Print…' }).focus();
    await desk.keyboard.press('Enter');
    await desk.getByRole('heading', { name: 'Print', exact: true }).waitFor();
    expect(await desk.locator('#desk').isVisible()).toBe(false);
    for (let i = 0; i < 3; i++) await desk.keyboard.press('Tab');
    await desk.keyboard.press('ArrowDown');
    const size = () => sheet().evaluate((paper) => getComputedStyle(paper).fontSize);
    expect(Number.parseFloat(await size())).toBeCloseTo((22 * 4) / 3, 1);
    await desk.keyboard.press('Escape');
    expect(await desk.evaluate(() => document.activeElement?.textContent)).toBe('Print…');
    await desk.reload();
    await openPrint();
    expect(Number.parseFloat(await size())).toBeCloseTo((22 * 4) / 3, 1);
  });

  test('has no axe faults in light or dark, and keeps its paper white in dark', async () => {
    await put();
    await addSource();
    await addStoryWord('lantern', 'a lamp you can carry');
    await openPrint();
    await choose('Next to each line', 'counts');
    for (const colorScheme of ['light', 'dark'] as const) {
      await desk.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
      await desk.setViewportSize({ width: 360, height: 800 });
      expect(await axeFaults(desk)).toEqual([]);
      expect(await desk.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
      const look = await sheet().evaluate((paper) => {
        const { backgroundColor, color } = getComputedStyle(paper);
        return [backgroundColor, color];
      });
      expect(look).toEqual(['rgb(255, 255, 255)', 'rgb(0, 0, 0)']);
    }
    await desk.setViewportSize({ width: 1280, height: 900 });
  });

  test('shows markup as text', async () => {
    await put('# <b>Nets</b> & "rope"\nThe <i>ferry</i> &amp; <img src=x onerror=alert(1)>');
    await openPrint();
    expect(await sheet().locator('h1').textContent()).toBe('<b>Nets</b> & "rope"');
    expect(await sheet().locator('p:last-of-type').last().textContent()).toBe(
      'The <i>ferry</i> &amp; <img src=x onerror=alert(1)>',
    );
    expect(await sheet().locator('b, i, img').count()).toBe(0);
  });
});

async function download(button: string): Promise<{ name: string; bytes: Buffer }> {
  const started = desk.waitForEvent('download');
  await desk.getByRole('button', { name: button }).click();
  const file = await started;
  return { name: file.suggestedFilename(), bytes: await readFile(await file.path()) };
}

const plainText = [
  'The ferry is late',
  'Words to pre-teach\nlantern: a lamp you can carry',
  ...story.split('\n').slice(1, 3),
  'In the shed',
  story.split('\n').slice(4, 6).join('\n'),
  story.split('\n')[6]!,
  `${source}\n`,
].join('\n\n');

test('a passage keeps its text in a Word document, plain text, a web page and a copy', async () => {
  await put();
  await addSource();
  await addStoryWord('lantern', 'a lamp you can carry');

  {
    const { name, bytes } = await download('Save for Word');
    expect(name).toBe('The ferry is late - Herons.docx');
    const { value } = await mammoth.extractRawText({ buffer: bytes });
    expect(value.split('\n').filter((line) => line !== '' && !line.startsWith('Name'))).toEqual([
      'The ferry is late',
      'Words to pre-teach',
      'lantern: a lamp you can carry',
      ...story
        .split('\n')
        .slice(1)
        .map((line) => line.replace(/^(##|-) /, '')),
    ]);
  }
  {
    const { name, bytes } = await download('Save as plain text');
    expect([name, bytes.toString('utf8')]).toEqual(['The ferry is late - Herons.txt', plainText]);
  }
  // The web page is a single file, has no axe faults and can be printed.
  {
    const { name, bytes } = await download('Save as web page');
    expect(name).toBe('The ferry is late - Herons.html');
    const page = await browser.open(browser.serve('saved.html', bytes.toString('utf8')));
    const requests: string[] = [];
    page.on('request', (request) => requests.push(request.url()));
    await page.reload();
    expect(requests.filter((address) => !/saved\.html|favicon/.test(address))).toEqual([]);
    expect(await page.title()).toBe('The ferry is late');
    expect(await page.locator('h1, main > h2, li, dt, dd, footer').allTextContents()).toEqual([
      'The ferry is late',
      'lantern',
      'a lamp you can carry',
      'In the shed',
      ...story
        .split('\n')
        .slice(4, 6)
        .map((line) => line.slice(2)),
      source,
    ]);
    expect(await axeFaults(page)).toEqual([]);
    const pages = await readPdf(await page.pdf({ preferCSSPageSize: true }));
    expect(linesOf(pages).at(-1)!.text).toBe(source);
    await page.close();
  }
  // The button `Copy` puts the passage on the clipboard as plain text and as structured text.
  {
    await desk.bringToFront();
    await desk.getByRole('button', { name: 'Copy', exact: true }).click();
    await desk.getByText('Copied.').waitFor();
    const pasting = desk.evaluate(
      () =>
        new Promise<{ text: string; html: string }>((resolve) => {
          const field = document.createElement('textarea');
          document.body.append(field);
          field.focus();
          field.addEventListener('paste', ({ clipboardData }) => {
            resolve({
              text: clipboardData!.getData('text/plain'),
              html: clipboardData!.getData('text/html'),
            });
          });
        }),
    );
    await desk.waitForSelector('body > textarea');
    await desk.keyboard.press('Control+v');
    const { text, html } = await pasting;
    expect(text).toBe(plainText);
    expect(html).toMatch(/<h1[^>]*>The ferry is late<\/h1>/);
    expect(html).toMatch(/<li[^>]*>a lamp<\/li>/);
    expect(html).toContain('Source: Wilma Falk');
  }
});

test('a web page made of any text shows that text in the browser and contains none of its markup', async () => {
  const samples = fc.sample(fc.tuple(nastyText, nastyText, nastyText), { seed: 20261125, numRuns: 300 });
  const pages = samples.map(([title, line, meaning]) =>
    writeHtml(
      makeSheet(
        {
          id: '',
          title,
          source: { url: null, byline: meaning, date: null },
          original: '',
          versions: {},
          rev: 0,
          saved: 0,
        },
        { text: `## ${line}\n- ${line}\n${line}`, storyWords: [{ word: line, meaning }] },
        plainContent,
        null,
      ),
      usualChoices,
    ),
  );
  const parsed = await desk.evaluate(
    (pages) =>
      pages.map((html) => {
        const { body, title } = new DOMParser().parseFromString(html, 'text/html');
        const elements = [...body.querySelectorAll('*')];
        return {
          title,
          tags: elements.map(({ localName }) => localName).join(' '),
          texts: elements.filter(({ children }) => children.length === 0).map((leaf) => leaf.textContent),
        };
      }),
    pages,
  );
  for (const [i, [rawTitle, rawLine, rawMeaning]] of samples.entries()) {
    const [title, line, meaning] = [rawTitle, rawLine, rawMeaning].map(cleanText) as [string, string, string];
    expect(parsed[i]!.tags).toBe('main h1 section h2 dl dt dd h2 ul li p footer');
    expect(parsed[i]!.texts).toEqual([
      title,
      'Words to pre-teach',
      line,
      meaning,
      line,
      line,
      line,
      `Source: ${meaning}`,
    ]);
    expect(parsed[i]!.title).toBe(title.replace(/[\t\n\f\r ]+/g, ' ').trim());
  }
});
