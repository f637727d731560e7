import { readdirSync, readFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { builtExtension } from '../../src/tools/launch-extension.ts';
import { loadSavedFile } from '../stored/stored-shapes.ts';
import { startBrowser, type TestBrowser } from './browser.ts';
import { cardFrame } from './framed-card.ts';

/** Text that adds an element, runs a script and loads a file wherever it is treated as markup. */
const NASTY =
  '<b class="evil">x</b><img class="evil" src="https://evil.example/a.png" onerror="globalThis.evil=1"><svg class="evil" onload="globalThis.evil=1"><script>globalThis.evil=1</script></svg></style></title></textarea><script src="https://evil.example/b.js"></script>\u202e&amp;"\'`{{x}}';
const ADDRESS = 'javascript:globalThis.evil=1';

let browser: TestBrowser;
/** Requests to addresses outside the extension and the test's own pages. */
const requests: string[] = [];

/**
 * Returns a file with everything that version 1 could store. Every text that a teacher, a page or a file may write
 * contains hostile markup.
 */
function nastyFile(): string {
  const [head, ...lines] = loadSavedFile('everything-1.jsonl').trimEnd().split('\n');
  const texts =
    /^(name|note|source|licence|title|byline|date|notes|original|text|word|meaning|head|soft start|tricky list)$/;
  const spoil = (value: unknown, key = ''): unknown => {
    if (typeof value === 'string')
      return texts.test(key) ? `${value} ${NASTY}` : key === 'url' ? ADDRESS : value;
    if (Array.isArray(value))
      return value.map((item) =>
        typeof item === 'string' && /^(tags|names|bySight|rows)$/.test(key)
          ? `${item} ${NASTY}`
          : spoil(item, key),
      );
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(Object.entries(value).map(([name, item]) => [name, spoil(item, name)]));
  };
  const spoilt = lines.map((line) => {
    const item = JSON.parse(line) as Record<string, unknown>;
    if ('stored' in item) return { ...item, value: spoil(item.value) };
    return Object.fromEntries(Object.entries(item).map(([kind, value]) => [kind, spoil(value)]));
  });
  return `${[head, ...spoilt.map((item) => JSON.stringify(item))].join('\n')}\n`;
}

const address = (path: string): string => browser.inside(`${path}`);

/**
 * Expects that all texts are shown as text: no text became an element, no script in a text ran, and no address in a
 * text can be followed.
 */
async function expectOnlyText(page: Page): Promise<void> {
  const found = () =>
    page.evaluate(() => ({
      elements: [
        ...document.querySelectorAll('.evil, [onerror], [onload], [src*="evil"], [href^="javascript:" i]'),
      ].map((element) => element.outerHTML.slice(0, 200)),
      ran: 'evil' in globalThis,
      shown: /<img class=.evil/.test(
        `${document.body.textContent} ${[...document.querySelectorAll('input, textarea')].map((field) => (field as HTMLInputElement).value).join(' ')}`,
      ),
    }));
  await expect.poll(found).toEqual({ elements: [], ran: false, shown: true });
}

beforeAll(async () => {
  browser = await startBrowser();
  browser.context.on('request', (request) => {
    if (/evil\.example/.test(request.url())) requests.push(request.url());
  });
  const view = await browser.open(address('groups.html#share'));
  await view.getByLabel('Choose a file, or drop it here').setInputFiles({
    name: `${NASTY.replaceAll('/', '')}.jsonl`,
    mimeType: '',
    buffer: Buffer.from(nastyFile()),
  });
  await view.getByRole('button', { name: 'Replace everything here' }).click();
  await view.getByText('Everything in the file is restored.').waitFor();
  await view.close();
});
afterAll(() => browser?.close());

const PASSAGE = '6a0f7c1e-0d5b-4f7e-9a51-2f1f0f1d7a10';
const TEXT = '0e1b7d52-5f4e-4f0c-8d52-0a9f1c3e2b11';

describe('stored markup is shown as text', () => {
  test.each([
    ['a group', 'groups.html#group/herons', '.words-field, textarea, input'],
    ['a sequence', 'groups.html#sequence/quay-steps', 'main input, main h2'],
    ['what is shared', 'groups.html#share', '.ticks'],
    ['the desk', 'desk.html', 'main, a'],
    ['a passage', `desk.html#passage/${PASSAGE}`, '.cm-line'],
    ['the shelf', 'shelf.html#texts', '.shelf-row'],
    ['a text of the shelf', `shelf.html#text/${TEXT}`, 'main textarea'],
    ['texts by groups', 'shelf.html#groups', '.shelf-table'],
    ['a lesson', 'lesson.html#group-1', '.lesson-part'],
    ['a lesson around a passage', `lesson.html#herons/${PASSAGE}`, '.lesson-part'],
    ['a report on a passage', `report.html#passage/${PASSAGE}/herons`, '.climb-plot'],
    ['a report on a text', `report.html#shelf/${TEXT}`, '.climb-plot'],
  ])('on the page with %s', async (_, path, selector) => {
    const page = await browser.open(address(path));
    await page.locator(selector).first().waitFor();
    await expectOnlyText(page);
    await page.close();
    expect(requests).toEqual([]);
  });
});

const escaped = NASTY.replaceAll('&', '&amp;').replaceAll('<', '&lt;');

test('a web page’s markup is shown as text in the panel and on the desk', async () => {
  const page = await browser.open(
    browser.serve(
      'evil.html',
      `<title>${escaped}</title><meta name="author" content="${escaped.replaceAll('"', '&quot;')}"><h1>${escaped}</h1><p>The lighthouse ${escaped} turned. A lighthouse.</p>`,
    ),
  );
  await browser.press(page);
  await page.waitForFunction(() => CSS.highlights.size > 0);
  const panel = await browser.openPanel(page);
  await panel.waitForSelector('.reach');
  await expectOnlyText(panel);
  await panel.getByRole('button', { name: 'lighthouse', exact: true }).first().click();
  await panel.locator('#word, .word-card, .card').first().waitFor();
  await expectOnlyText(panel);
  await expectOnlyText(page);
  expect(requests).toEqual([]);
});

test('the card of a word contains nothing of the text around the word', async () => {
  const page = await browser.open(
    browser.serve('card.html', `<title>${escaped}</title><p>Lighthouse ${escaped} turned.</p>`),
  );
  await browser.press(page);
  await page.waitForFunction(() => CSS.highlights.size > 0);
  await page.locator('p').click({ modifiers: ['Alt'], position: { x: 20, y: 8 } });
  await expect.poll(async () => (await readCard(page)).text).toMatch(/lighthouse/i);
  const { text, elements } = await readCard(page);
  expect(text).not.toMatch(/[<>]|evil/);
  expect(elements.filter((element) => /evil|script|javascript:|onerror|onload/i.test(element))).toEqual([]);
  expect(await page.evaluate(() => 'evil' in globalThis)).toBe(false);
  expect(requests).toEqual([]);
});

/**
 * Returns the content of the card, which is a page of the extension in a frame: the whole text, and each element with
 * its attributes.
 */
async function readCard(page: Page): Promise<{ text: string; elements: string[] }> {
  const card = await cardFrame(page);
  return card.evaluate(() => ({
    text: document.body.textContent ?? '',
    elements: [...document.body.querySelectorAll('*')].map(({ nodeName, attributes }) =>
      [nodeName, ...[...attributes].map(({ name, value }) => `${name} ${value}`)].join(' '),
    ),
  }));
}

test.each([
  ['a.txt', NASTY],
  [
    'a.html',
    `<title>${escaped}</title><p>${escaped}</p><img src="https://evil.example/c.png" onerror="evil=1"><script>evil=1</script>`,
  ],
])('a file %s is opened as plain text', async (name, content) => {
  const desk = await browser.open(address('desk.html#new'));
  await desk.getByLabel(/^Choose a text/).setInputFiles({ name, mimeType: '', buffer: Buffer.from(content) });
  await desk.locator('.cm-line').filter({ hasText: 'class="evil"' }).first().waitFor();
  await expectOnlyText(desk);
  await desk.close();
  expect(requests).toEqual([]);
});

test.each([
  ['a lesson', 'lesson.html#group-1', '.lesson-part'],
  ['a report', `report.html#passage/${PASSAGE}/herons`, '.climb-plot'],
])(
  '%s saved as a web page has no script, loads nothing, and shows markup as text',
  async (_, path, selector) => {
    const page = await browser.open(address(path));
    await page.locator(selector).first().waitFor();
    const saving = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save as web page' }).click();
    const saved = await readFile(await (await saving).path(), 'utf8');
    await page.close();
    const opened = await browser.open(browser.serve('saved.html', saved));
    await expectOnlyText(opened);
    expect(await opened.locator('script, link, iframe, object, img').count()).toBe(0);
    expect(requests).toEqual([]);
  },
);

describe('the package', () => {
  const files = readdirSync(builtExtension, { recursive: true, encoding: 'utf8' });

  test('has pages without inline scripts, event handlers or anything from other sites', () => {
    const pages = files.filter((file) => /^[a-z]+\.html$/.test(file));
    expect(pages.length).toBeGreaterThan(4);
    for (const file of pages) {
      const html = readFileSync(join(builtExtension, file), 'utf8');
      expect(
        html.match(/<script(?![^>]*\bsrc=)[^>]*>|\son\w+=|(?:src|href)="(?:https?:)?\/\/|<style/gi),
        file,
      ).toBeNull();
    }
  });

  test('lets its pages run and load only files of the package', async () => {
    const manifest = JSON.parse(readFileSync(join(builtExtension, 'manifest.json'), 'utf8')) as {
      content_security_policy: { extension_pages: string };
      permissions: string[];
      web_accessible_resources: object[];
    };
    const policy = manifest.content_security_policy.extension_pages;
    // WebAssembly of the package may run, since it reads pictures. Text is never turned into code.
    expect(policy).toMatch(/^default-src 'none'; script-src 'self' 'wasm-unsafe-eval';/);
    expect(policy.replace("'wasm-unsafe-eval'", '')).not.toMatch(/unsafe|https?:|\*/);
    // The docs give the reason for each permission.
    const docs = readFileSync(new URL('../../DEVELOPERS.md', import.meta.url), 'utf8');
    expect(manifest.permissions.filter((name) => !docs.includes(`| \`${name}\` |`))).toEqual([]);
    expect(Object.keys(manifest).filter((key) => /host_permissions|externally/.test(key))).toEqual([]);
    // Web pages can reach only the card's frame, and they do not know its address.
    expect(manifest.web_accessible_resources).toEqual([
      { resources: ['card.html'], matches: ['<all_urls>'], use_dynamic_url: true },
    ]);
    const page = await browser.open(address('desk.html'));
    const blocked = await page.evaluate(async () => {
      // The code runs in a separate task, because code that a test runs directly may evaluate text.
      const evaluated = await new Promise<string>((resolve) => {
        setTimeout(() => {
          try {
            resolve(String(new Function('return 1')()));
          } catch (error) {
            resolve((error as Error).name);
          }
        });
      });
      const fetched = await fetch('https://evil.example/').catch((error: Error) => error.name);
      return [evaluated, fetched];
    });
    expect(blocked).toEqual(['EvalError', 'TypeError']);
    await page.close();
  });

  test('turns text into code only in libraries, and the policy refuses it there', () => {
    const found = files
      .filter((file) => /\.m?js$/.test(file))
      .flatMap((file) => {
        const code = readFileSync(join(builtExtension, file), 'utf8');
        return (code.match(/(?<![\w.$])(?:eval|Function)\(/g) ?? []).map(() =>
          file.replace(/-[\w-]{8}\./, '.'),
        );
      });
    expect([...new Set(found)].sort()).toEqual([
      'assets/convert-docx.worker.js',
      'assets/pdf.worker.min.mjs',
      'chunks/open-pdf.js',
      'chunks/open-picture-reader.js',
      'picture-reader/worker.min.js',
    ]);
  });
});
