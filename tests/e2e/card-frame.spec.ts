import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { browserName, startBrowser, type TestBrowser } from './browser.ts';
import { cardFrame, openCardOn, pressEscape, restOn } from './framed-card.ts';

let browser: TestBrowser;
let server: Server;
let headers: Readonly<Record<string, string>> = {};
beforeAll(async () => {
  browser = await startBrowser();
  server = createServer((_request, response) => {
    response.writeHead(200, { 'content-type': 'text/html; charset=utf-8', ...headers }).end(story());
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
});
afterAll(async () => {
  await browser?.close();
  server?.close();
});
afterEach(async () => {
  for (const page of browser.context.pages().slice(1)) await page.close();
});

const story = (more = '', head = ''): string =>
  `<!doctype html><meta charset="utf-8">${head}<title>Quay</title><body style="margin: 40px; font: 20px/1.6 serif">
  <p>The <b>lighthouse</b> keeper was hoping.</p>${more}`;

function open(html = story()): Promise<Page> {
  return browser.open(browser.serve('card.html', html));
}

/** Returns everything that a script of the page can find out about an open card, as one text. */
async function spy(page: Page, { x, y }: { x: number; y: number }): Promise<string> {
  return page.evaluate(
    ({ x, y }) => {
      const view = window as unknown as { find(text: string): boolean; spied?: unknown[] };
      const tell = (one: unknown): string =>
        one instanceof Node ? `${one.nodeName} in ${one.getRootNode().nodeName}` : String(one);
      const found = ['of your sequence', 'hear it', 'Mark as taught'].filter((text) => view.find(text));
      document.execCommand('selectAll');
      const entries = performance.getEntries().map((entry) => JSON.stringify(entry));
      return [
        `found: ${found}`,
        `selected: ${String(getSelection()).trim()}`,
        `frames: ${frames.length}`,
        `extension: ${entries.filter((entry) => /extension:/.test(entry))}`,
        `caret: ${tell(document.caretPositionFromPoint?.(x, y)?.offsetNode)}`,
        `elements: ${document.elementsFromPoint(x, y).map(tell)}`,
        `active: ${tell(document.activeElement)}`,
        `html: ${document.documentElement.outerHTML.includes('Mark')}`,
        `spied: ${view.spied ?? []}`,
      ].join('\n');
    },
    { x, y },
  );
}

describe('a script of the page', () => {
  test('can tell that a card is open, but cannot read its content', async () => {
    const page = await open();
    await page.evaluate(() => {
      const spied: string[] = [];
      Object.assign(window, { spied });
      const note = (one: unknown, where: string): void => {
        if (one instanceof Node && one.getRootNode() !== document) spied.push(`${where} ${one.nodeName}`);
        if (one === null || typeof one !== 'object') return;
        if (one !== window && Object.prototype.toString.call(one) === '[object Window]') spied.push(where);
      };
      for (const kind of [
        'pointerover',
        'pointermove',
        'pointerout',
        'pointerdown',
        'focusin',
        'focus',
        'blur',
        'load',
        'toggle',
        'message',
        'error',
      ])
        addEventListener(
          kind,
          (event) => {
            const all = event as unknown as Record<string, unknown>;
            for (const name of [
              'target',
              'originalTarget',
              'explicitOriginalTarget',
              'relatedTarget',
              'rangeParent',
              'source',
            ])
              note(all[name], `${kind} ${name}`);
            for (const one of event.composedPath()) note(one, `${kind} path`);
          },
          true,
        );
      addEventListener(
        'securitypolicyviolation',
        ({ blockedURI }) => spied.push(`policy ${blockedURI}`),
        true,
      );
    });
    const card = await openCardOn(browser, page);
    const { x, y } = (await card.locator('.sheet').boundingBox())!;
    await page.mouse.move(x + 20, y + 20);
    await page.mouse.move(x + 40, y + 40);
    await page.mouse.down();
    await page.mouse.up();
    expect(await card.evaluate(() => document.body.textContent)).toContain('of your sequence');
    expect(await spy(page, { x: x + 40, y: y + 40 })).toBe(
      [
        'found: ',
        'selected: The lighthouse keeper was hoping.',
        'frames: 0',
        'extension: ',
        'caret: HTML in #document',
        'elements: DIV in #document,HTML in #document',
        'active: DIV in #document',
        'html: false',
        // Events in Firefox report elements in closed roots, but the frame reveals nothing about the card
        // (card-covers.spec.ts).
        `spied: ${browserName === 'firefox' ? 'pointerover originalTarget IFRAME,pointerover explicitOriginalTarget IFRAME,pointerover rangeParent #document-fragment' : ''}`,
      ].join('\n'),
    );
  });
});

describe('a card opens', () => {
  test.each<[string, Readonly<Record<string, string>>]>([
    [
      'allows no frames',
      { 'content-security-policy': "default-src 'none'; style-src 'unsafe-inline'; frame-src 'none'" },
    ],
  ])('on a page that %s', async (_what, given) => {
    headers = given;
    const page = await browser.open(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`);
    await page.evaluate(() => {
      const told: string[] = [];
      Object.assign(window, { told });
      addEventListener('securitypolicyviolation', ({ blockedURI }) => told.push(blockedURI), true);
    });
    const card = await openCardOn(browser, page);
    expect(await card.evaluate(() => document.body.textContent)).toContain('Not yet decodable.');
    expect(await page.evaluate(() => (window as unknown as { told: string[] }).told)).toEqual([]);
  });

  const ISOLATED: [string, Readonly<Record<string, string>>] = [
    'lets in only what allows it',
    { 'cross-origin-embedder-policy': 'require-corp', 'cross-origin-opener-policy': 'same-origin' },
  ];
  test.each<[string, Readonly<Record<string, string>>]>([
    ['is sealed off', { 'content-security-policy': 'sandbox allow-scripts' }],
    // Firefox allows frames of extensions on an isolated page.
    ...(browserName === 'chromium' ? [ISOLATED] : []),
  ])('without a frame and with no effect on the page, on a page that %s', async (_what, given) => {
    headers = given;
    const page = await browser.open(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`);
    await browser.press(page);
    await page.waitForFunction(() => CSS.highlights.size > 0);
    const finds = (text: string): Promise<boolean> =>
      page.evaluate((text) => {
        getSelection()!.removeAllRanges();
        return (window as unknown as { find(text: string): boolean }).find(text);
      }, text);
    const children = (): Promise<number> => page.evaluate(() => document.documentElement.children.length);
    await restOn(page, page.locator('b'), async () => (await children()) === 3);
    // In Firefox the page search does not find text in closed roots. There the card without a frame is recognised only
    // by its element.
    if (browserName === 'chromium')
      await expect.poll(() => finds('Use the panel'), { timeout: 20_000 }).toBe(true);
    else
      await expect
        .poll(async () => [page.frames().length, await children()], { timeout: 20_000 })
        .toEqual([1, 3]);
    expect(await finds('of your sequence')).toBe(false);
    expect(await finds('Counts as')).toBe(false);
    await page.keyboard.press('Escape');
    await expect.poll(children).toBe(2);
  });

  test('in an empty frame that a script has filled', async () => {
    const page = await open(
      story(`<iframe width="700" height="600"></iframe><script>
        document.querySelector('iframe').contentDocument.body.innerHTML = '<p>A <i>lighthouse</i> by the sea.';
      </script>`),
    );
    const card = await openCardOn(browser, page, page.frameLocator('iframe').locator('i'));
    expect(await card.evaluate(() => document.body.textContent)).toContain('Not yet decodable.');
  });
});

describe('the keyboard', () => {
  test('moves into a card opened by the next-word command, and back to its former place', async () => {
    const page = await open(story('<input aria-label="Search">'));
    await browser.press(page);
    await page.waitForFunction(() => CSS.highlights.size > 0);
    await page.getByLabel('Search').focus();
    await browser.command('next-word');
    const card = await cardFrame(page);
    await expect.poll(() => card.evaluate(() => document.activeElement?.getAttribute('role'))).toBe('dialog');
    await page.keyboard.press('Tab');
    await expect.poll(() => card.evaluate(() => document.activeElement?.textContent)).toBe('hear it');
    pressEscape(page);
    await page.waitForFunction(() => document.querySelector('[popover]') === null);
    expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('INPUT');
  });
});

test('a card that a page opens by itself stays empty', async () => {
  const page = await open();
  const card = await openCardOn(browser, page);
  const address = card.url().split('#')[0]!;
  await page.keyboard.press('Escape');
  await page.evaluate((address) => {
    const frame = document.createElement('iframe');
    frame.src = `${address}#mine`;
    document.body.append(frame);
    frame.onload = () => frame.contentWindow!.postMessage('other', '*', [new MessageChannel().port2]);
  }, address);
  await page.waitForFunction(() => document.querySelector('body > iframe') !== null);
  for (const frame of page.frames().slice(1))
    if (frame.url().includes('card.html'))
      expect(await frame.evaluate(() => document.body.textContent?.trim())).toBe('');
});
