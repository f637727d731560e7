import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { makeDocx, makeEpub } from '../desk/make-files.ts';
import { startFirefox } from './browser.ts';
import { PDF, SLIDE, STORY, textLayer } from './figure-pages.ts';
import { markedWords } from './marked-words.ts';
import { readPdf } from './read-pdf.ts';

let firefox: Awaited<ReturnType<typeof startFirefox>>;
let opened: Page[] = [];

beforeAll(async () => {
  firefox = await startFirefox();
});
afterEach(async () => {
  for (const page of opened) await page.close();
  opened = [];
});
afterAll(async () => {
  await firefox?.close();
});

async function open(address: string): Promise<Page> {
  const page = await firefox.open(address);
  opened.push(page);
  return page;
}

/** Waits up to ten seconds, as long as a teacher would, for an expected value of the page or the sidebar. */
function eventually<T>(ask: () => Promise<T>): ReturnType<typeof expect.poll<T>> {
  return expect.poll(ask, { timeout: 10_000 });
}

const outerHtml = (page: Page): Promise<string> => page.evaluate(() => document.documentElement.outerHTML);
const highlights = (page: Page): Promise<number> => page.evaluate(() => CSS.highlights.size);
/** Returns the text of the card, which is a frame in a closed shadow root. */
const cardText = async (): Promise<string> => {
  const frames = firefox.context.pages().flatMap((page) => page.frames());
  const card = frames.find((frame) => frame.url().includes('/card.html#'));
  return (await card?.evaluate(() => document.body.textContent).catch(() => '')) ?? '';
};
const sidebarText = (): Promise<string> => firefox.inSidebar((document) => document.body.textContent ?? '');

test('the button shades the practice page, like any page', async () => {
  const page = await open(firefox.inside('practice.html'));
  await eventually(() => page.evaluate(() => document.querySelectorAll('article p').length)).toBeGreaterThan(
    5,
  );
  await firefox.press(page);
  await eventually(() => highlights(page)).toBeGreaterThan(0);
  await eventually(() => page.evaluate(() => document.body.textContent)).toContain(
    'Rest the pointer on a shaded word',
  );
  await firefox.press(page);
  await eventually(() => page.evaluate(() => document.body.textContent)).toContain(
    'press the Wordreach button',
  );
});

describe('a long article for the Herons', () => {
  test('the same words are marked as in Chromium, and removing the shading restores the page', async () => {
    const expected = JSON.parse(
      readFileSync(new URL('../pages/article.expected.json', import.meta.url), 'utf8'),
    );
    const page = await open(firefox.address('article.html'));
    const before = await outerHtml(page);

    await firefox.press(page);
    await eventually(() => markedWords(page)).toEqual(expected);
    expect(await outerHtml(page)).toBe(before);

    await firefox.press(page);
    await eventually(() => highlights(page)).toBe(0);
    expect(await outerHtml(page)).toBe(before);
    await eventually(() => page.evaluate(() => document.adoptedStyleSheets.length)).toBe(0);
  });
});

describe('a short page', () => {
  const story = '<title>The pier</title><p>The lighthouse lamp went out. A storm hit the pier.</p>';

  test('the shortcuts shade the page and go to its words', async () => {
    expect(await firefox.shortcuts()).toEqual(['alt,shift R', 'alt,shift N']);
    const page = await open(firefox.serve('pier.html', story));
    await firefox.pressShortcut('R');
    await eventually(async () => (await markedWords(page)).beyond).toContain('storm');
    await firefox.pressShortcut('N');
    await eventually(() => page.evaluate(() => CSS.highlights.get('wr-4')?.size)).toBe(1);
  });

  test('open shadow roots and text added later are shaded', async () => {
    const page = await open(firefox.serve('later.html', '<title>Later</title><div></div><p>A storm</p>'));
    await page.evaluate(() => {
      document.querySelector('div')!.attachShadow({ mode: 'open' }).innerHTML = '<p>The harbour</p>';
    });
    await firefox.press(page);
    await eventually(async () => (await markedWords(page)).beyond).toEqual(['harbour', 'storm']);
    // Firefox paints highlights in a shadow root only if the root has a highlight rule of its own.
    const sheets = (): Promise<number> =>
      page.evaluate(() => document.querySelector('div')!.shadowRoot!.adoptedStyleSheets.length);
    expect(await sheets()).toBe(1);
    await page.evaluate(() =>
      document.body.append(Object.assign(document.createElement('p'), { textContent: 'Seven seals' })),
    );
    await eventually(async () => (await markedWords(page)).beyond).toEqual([
      'harbour',
      'storm',
      'Seven',
      'seals',
    ]);
    await firefox.press(page);
    await eventually(sheets).toBe(0);
  });

  test('resting the pointer on a word opens its card', async () => {
    const page = await open(firefox.serve('pier.html', story));
    await firefox.press(page);
    await eventually(async () => (await markedWords(page)).beyond).toContain('lighthouse');
    const { x, y } = await page.evaluate(() => {
      const [range] = [...CSS.highlights.get('wr-1')!] as StaticRange[];
      const live = document.createRange();
      live.setStart(range!.startContainer, range!.startOffset);
      live.setEnd(range!.endContainer, range!.endOffset);
      const { left, top, width, height } = live.getBoundingClientRect();
      return { x: Math.round(left + width / 2), y: Math.round(top + height / 2) };
    });
    await page.mouse.move(x, y + 200);
    await page.mouse.move(x, y);
    await eventually(cardText).toContain('lighthouse');
    expect(await page.evaluate(() => document.documentElement.lastElementChild?.shadowRoot)).toBe(null);
    await page.keyboard.press('Escape');
    await eventually(cardText).toBe('');
  });

  test('the context menu checks a selection, even after the extension was turned off and on', async () => {
    await firefox.restart();
    const page = await open(
      firefox.serve('two.html', '<title>Two</title><p>A storm.</p><p id="b">A harbour.</p>'),
    );
    await page.evaluate(() => getSelection()!.selectAllChildren(document.querySelector('#b')!));
    await firefox.checkSelection(page, '#b');
    await eventually(async () => (await markedWords(page)).beyond).toEqual(['harbour']);
  });

  test('the sidebar shows the reach and the missing patterns, and splits a word into its units', async () => {
    const page = await open(firefox.serve('pier.html', story));
    await firefox.press(page);
    await eventually(sidebarText).toContain('Missing patterns');
    expect(await sidebarText()).toMatch(/\d+(\.\d)?% readable/);
    expect(await sidebarText()).toContain('The pier');
    expect(await firefox.badge(page)).toMatch(/^\d+%?$/);

    await firefox.inSidebar((document) => {
      const words = [...document.querySelectorAll('button')];
      words.find(({ textContent }) => textContent === 'storm')!.click();
    });
    await eventually(() =>
      firefox.inSidebar((document) =>
        [...document.querySelectorAll('.unit-letters')].map(({ textContent }) => textContent),
      ),
    ).toEqual(['s', 't', 'or', 'm']);
  });

  test('the sidebar follows the active tab, and shades its page on request', async () => {
    const page = await open(firefox.serve('pier.html', story));
    await firefox.press(page);
    await eventually(sidebarText).toContain('Missing patterns');
    const other = await open(firefox.serve('other.html', '<title>Other</title><p>A harbour.</p>'));
    await eventually(sidebarText).toContain('press the Wordreach button');
    await page.bringToFront();
    await eventually(sidebarText).toContain('Missing patterns');
    await firefox.press(page);
    await eventually(sidebarText).toContain('Shade this page');
    await firefox.inSidebar((document) => {
      const buttons = [...document.querySelectorAll('button')];
      buttons.find(({ textContent }) => textContent === 'Shade this page')!.click();
    });
    await eventually(() => highlights(page)).toBeGreaterThan(0);
    expect(await highlights(other)).toBe(0);
  });

  test.each([
    ['a page of the browser', 'about:support', 'a page of the browser itself'],
    ['the reader view', 'about:reader?url=', 'Leave the reader view'],
  ])('the sidebar says that it cannot read %s', async (_what, address, sentence) => {
    const story = address.endsWith('=') ? encodeURIComponent(firefox.address('article.html')) : '';
    const page = await open(address + story);
    await firefox.press(page);
    await eventually(sidebarText).toContain(sentence);
  });
});

describe('frames', () => {
  test('are read with the page, even from other sites, and none is reported as left out', async () => {
    firefox.serve('inner.html', '<title>Inner</title><p>Seven lanterns');
    const foreign = firefox.serve('foreign.html', '<p>Whales').replace('127.0.0.1', 'localhost');
    const page = await open(
      firefox.serve(
        'outer.html',
        `<title>Outer</title><p>The lighthouse</p><iframe src="inner.html"></iframe>
         <iframe src="${foreign}" title="Whale log" width="400" height="200"></iframe>`,
      ),
    );
    await firefox.press(page);
    const inner = (): Promise<number> =>
      page.evaluate(() => (frames[0] as unknown as typeof globalThis).CSS.highlights.get('wr-1')?.size ?? 0);
    await eventually(inner).toBe(2);
    await eventually(sidebarText).toContain('of 5 words');
    expect(await sidebarText()).not.toContain('Whale log');
    await firefox.press(page);
    await eventually(inner).toBe(0);
  });
});

describe('pages with a possibly misleading figure', () => {
  const full = 'style="position:fixed;left:0;top:60px;width:900px;height:700px"';
  const menu = '<p>Edit the page</p>';
  test.each([
    [
      'a PDF in a frame',
      `${menu}<iframe ${full} src="tides.pdf"></iframe>`,
      'because it is a PDF: tides.pdf',
    ],
    ['a PDF that is embedded', `${menu}<embed ${full} src="tides.pdf">`, 'because it is a PDF: tides.pdf'],
    ['an editor', `${menu}<div contenteditable>${STORY}</div>`, 'in a field for writing'],
    ['a canvas', `${menu}<canvas ${full}></canvas>`, 'is a drawing'],
    [
      'a story that is cut off',
      `<div style="height:120px;overflow:hidden">${STORY}</div>`,
      'hidden on the page',
    ],
  ])('%s: the line above the figure names the limit', async (_what, html, says) => {
    firefox.serve('tides.pdf', PDF);
    const page = await open(
      firefox.serve('limited.html', `<!doctype html><html lang="en"><title>Quay</title>${html}`),
    );
    await firefox.press(page);
    await eventually(sidebarText).toContain(says);
  });

  test('a sandboxed frame is read, unlike in Chromium, and no limit is reported', async () => {
    const page = await open(
      firefox.serve(
        'sealed.html',
        `<!doctype html><html lang="en"><title>Quay</title>${menu}<iframe ${full} sandbox srcdoc="<p>Six gulls sat on a net"></iframe>`,
      ),
    );
    await firefox.press(page);
    await eventually(sidebarText).toContain('of 9 words');
    expect(await sidebarText()).not.toContain('does not let extensions in');
  });

  test('a closed shadow root, an SVG slide, and text cut into runs are read', async () => {
    const page = await open(
      firefox.serve(
        'unusual.html',
        `<!doctype html><html lang="en"><title>Quay</title><tarn-story></tarn-story>${SLIDE}<div style="position:relative">${textLayer()}</div><script>
          document.querySelector('tarn-story').attachShadow({ mode: 'closed' }).innerHTML = '<p>Six gulls sat on a net';</script>`,
      ),
    );
    await firefox.press(page);
    // The words are 6 in the shadow root, 17 on the slide and 22 over the page. The panel counts the names among them
    // separately.
    await eventually(async () => {
      const said = await sidebarText();
      return Number(/of (\d+) words/.exec(said)?.[1]) + Number(/(\d+) names?\b/.exec(said)?.[1] ?? 0);
    }).toBe(6 + 17 + 22);
  });
});

describe('the desk', () => {
  test('shades a pasted text, and keeps it after a reload', async () => {
    const desk = await open(firefox.inside('desk.html'));
    await desk.evaluate(() => navigator.clipboard.writeText('Bram went to the shed with a lantern.'));
    await desk.getByRole('textbox', { name: 'Text' }).click();
    await desk.keyboard.press('Control+v');
    await desk.getByRole('button', { name: 'Make a passage' }).click();
    const shaded = (): Promise<(string | null)[]> =>
      desk.evaluate(() => [...document.querySelectorAll('.desk-beyond')].map((word) => word.textContent));
    await eventually(shaded).toEqual(['lantern']);
    await desk.reload();
    await eventually(shaded).toEqual(['lantern']);
  });

  test('prints the pages that the screen shows, each with the source and its page number', async () => {
    const desk = await open(firefox.inside('desk.html'));
    await desk.evaluate(() => {
      const line = 'Bram ran to the dock with a big lamp and a net, and Otto sat on the wall. ';
      const part = (_: unknown, i: number) =>
        i % 7 === 3 ? `## Part ${i}` : `${i % 5 === 1 ? '- ' : ''}${line.repeat((i % 4) + 1)}`;
      return navigator.clipboard.writeText(`# The Ferry\n${Array.from({ length: 30 }, part).join('\n')}`);
    });
    await desk.getByRole('textbox', { name: 'Text' }).click();
    await desk.keyboard.press('Control+v');
    await desk.getByRole('button', { name: 'Make a passage' }).click();
    const count = (): Promise<number> =>
      desk.evaluate(() => document.querySelectorAll('.cm-line, .sheet-page').length);
    await eventually(count).toBeGreaterThan(0);
    await desk.evaluate(() => {
      document.querySelector<HTMLElement>('.unfold > summary')!.click();
      const field = [...document.querySelectorAll<HTMLInputElement>('.desk-source input')][1]!;
      field.value = `https://tarn-quay.example/${'news/'.repeat(40)}`;
      field.dispatchEvent(new InputEvent('input', { bubbles: true }));
    });
    await desk.getByRole('button', { name: 'Print…' }).click();
    const shown = (): Promise<string[]> =>
      desk.evaluate(() =>
        [...document.querySelectorAll('.sheet-page')].map((page) => page.textContent!.replace(/\s/g, '')),
      );
    await eventually(async () => (await shown()).length).toBeGreaterThan(3);
    const pages = await readPdf(
      await desk.pdf({ format: 'A4', margin: { top: '18mm', bottom: '20mm', left: '20mm', right: '20mm' } }),
    );
    const printed = pages.map(({ lines }) =>
      lines
        .map(({ text }) => text)
        .join('')
        .replace(/\s/g, ''),
    );
    expect(printed.map((text) => text.replaceAll('•', ''))).toEqual(await shown());
    expect(printed.every((text) => text.includes('Source:https://tarn-quay.example/news/'))).toBe(true);
    for (const [i, text] of printed.entries()) expect(text.endsWith(`${i + 1}`)).toBe(i > 0);
  });
});

describe('the Groups page', () => {
  test('accepts a pasted sequence, keeps the group and its step, and a page is shaded for it', async () => {
    const groups = await open(firefox.inside('groups.html'));
    await groups.evaluate(() =>
      navigator.clipboard.writeText(
        [
          'Step\tPhonics\tSight words',
          '1\tm, s, t, short a\tthe, a',
          '2\tp, n, short i, d\tis',
          '3\tsh, ch\tthey',
        ].join('\n'),
      ),
    );
    await groups.getByRole('link', { name: 'Paste a sequence' }).click();
    await groups.getByRole('textbox', { name: 'Your scope and sequence' }).click();
    await groups.keyboard.press('Control+v');
    await groups.getByRole('combobox', { name: 'Group' }).selectOption({ label: 'Plovers' });
    await groups.getByRole('button', { name: 'Use this sequence' }).click();
    await groups.getByRole('combobox', { name: 'Last step taught' }).selectOption('3');
    await groups.getByRole('button', { name: 'Use this group' }).click();
    const said = (): Promise<string> => groups.evaluate(() => document.body.textContent ?? '');
    await eventually(said).toContain('In use: pages are shaded for this group.');

    await groups.reload();
    await eventually(said).toContain('step 3 of Our sequence · in use');

    const story = await open(
      firefox.serve('ship.html', '<title>Ship</title><p>A ship is in the mist. They sat on a green rug.</p>'),
    );
    await firefox.press(story);
    await eventually(async () => (await markedWords(story)).fresh).toContain('ship');
    const { beyond } = await markedWords(story);
    expect(beyond).toContain('green');
    expect(beyond).not.toContain('They');
    await eventually(sidebarText).toContain('in Our sequence');
  });
});

describe('files dropped on the desk', () => {
  const drop = (page: Page, name: string, bytes: Uint8Array): Promise<void> =>
    page.evaluate(
      ({ name, bytes }) => {
        const dataTransfer = new DataTransfer();
        dataTransfer.items.add(new File([new Uint8Array(bytes)], name));
        document
          .querySelector('.drop')!
          .dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true }));
      },
      { name, bytes: [...bytes] },
    );
  const says = (page: Page, selector: string): Promise<string> =>
    page.evaluate((selector) => document.querySelector(selector)?.textContent ?? '', selector);

  test.each<[string, () => Promise<Uint8Array> | Uint8Array, string]>([
    [
      'ferry.html',
      () => Buffer.from('<!doctype html><title>x</title><p>The ferry is late.'),
      'The ferry is late.',
    ],
    ['ferry.docx', makeDocx, 'The Marigold at Rest'],
    [
      'bell.epub',
      () => makeEpub([{ name: 'one', body: '<p>Bram rang the bell.</p>' }]),
      'Bram rang the bell.',
    ],
  ])('%s is opened as a passage', async (name, make, text) => {
    const desk = await open(firefox.inside('desk.html#new'));
    await eventually(() => desk.evaluate(() => document.querySelectorAll('.drop').length)).toBe(1);
    await drop(desk, name, await make());
    await eventually(() => says(desk, '.cm-content')).toContain(text);
  });

  test('a page of a million empty tags is read while the desk stays responsive', async () => {
    const desk = await open(firefox.inside('desk.html#new'));
    await eventually(() => desk.evaluate(() => document.querySelectorAll('.drop').length)).toBe(1);
    await desk.evaluate(() => {
      const count = { turns: 0 };
      Object.assign(window, { count });
      const draw = (): void => {
        count.turns++;
        requestAnimationFrame(draw);
      };
      draw();
      const dataTransfer = new DataTransfer();
      dataTransfer.items.add(new File([`<!doctype html>${'<i></i>'.repeat(499_000)}`], 'empty.html'));
      document.querySelector('.drop')!.dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true }));
    });
    await expect
      .poll(() => says(desk, '.note-wrong'), { timeout: 50_000 })
      .toMatch(/no words in this web page|takes too long/);
    const turns = await desk.evaluate(() => (window as unknown as { count: { turns: number } }).count.turns);
    // A blocked page would be drawn only once or twice.
    expect(turns).toBeGreaterThan(20);
  });
});

describe('the shelf', () => {
  test('reads and ranks dropped files, keeps them after a reload, and is the same in two windows', async () => {
    const shelf = await open(firefox.inside('shelf.html#add'));
    const says = (page: Page): Promise<string> =>
      page.evaluate(() => document.querySelector('main')?.textContent ?? '');
    await eventually(() => shelf.evaluate(() => document.querySelectorAll('.drop').length)).toBe(1);
    const other = await open(firefox.inside('shelf.html#texts'));
    await eventually(() => says(other)).toContain('The shelf is empty.');
    await shelf.evaluate(() => {
      const dataTransfer = new DataTransfer();
      dataTransfer.items.add(new File(['The Marigold turned round the lighthouse.'], 'The ferry.txt'));
      dataTransfer.items.add(new File(['Bram has a big net. It is in the mud.'], 'A net.txt'));
      document.querySelector('.drop')!.dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true }));
    });
    await eventually(() => says(shelf)).toContain('2 texts saved to the shelf');
    const titles = (): Promise<string[]> =>
      other.evaluate(() =>
        [...document.querySelectorAll('.shelf-title')].map(({ textContent }) => textContent ?? ''),
      );
    await eventually(titles).toEqual(['A net', 'The ferry']);
    await other.reload();
    await eventually(titles).toEqual(['A net', 'The ferry']);
  });
});
