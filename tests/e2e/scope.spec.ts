import type { BrowserContext } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { startPlainBrowser } from './browser.ts';
import { openOverlayPage } from './overlay-page.ts';

let context: BrowserContext;
beforeAll(async () => {
  const browser = await startPlainBrowser();
  context = await browser.newContext();
});
afterEach(async () => {
  for (const page of context.pages()) await page.close();
});
afterAll(() => context?.browser()?.close());

const sentence = 'The ferry came in late that night, and the crew had to tie her up in the dark. ';
const paragraph = `<p>${sentence.repeat(4)}</p>`;
const news = `<!doctype html><title>The Ferry Comes In Late - Tarn Quay News</title><body>
  <nav><ul><li><a href="#">Tides</a><li><a href="#">Sport</a></ul></nav>
  <div id="content"><h1>The Ferry Comes In Late</h1>${paragraph.repeat(4)}
    <x-note></x-note></div>
  <aside><h2>Related</h2><ul><li><a href="#">Whales seen</a></ul></aside>
  <footer>Copyright</footer>`;

const scopeOf = (at: Awaited<ReturnType<typeof openOverlayPage>>) =>
  at.page.evaluate(async () => (await wordreachTest.overlay.words()).scope);

describe('the main story', () => {
  test('is read with its heading and without the parts around it', async () => {
    const at = await openOverlayPage(
      await context.newPage(),
      news,
      () => {
        document.querySelector('x-note')!.attachShadow({ mode: 'open' }).innerHTML = '<p>Ropes</p>';
      },
      null,
    );
    expect(await scopeOf(at)).toBe('story');
    const keys = (await at.keys()).replace(/×\d+/g, '').split(' ');
    expect(keys).toEqual(expect.arrayContaining(['ferry', 'comes', 'ropes', 'crew']));
    for (const other of ['tides', 'sport', 'whales', 'related', 'copyright'])
      expect(keys).not.toContain(other);
    expect(await at.page.evaluate(async () => (await wordreachTest.overlay.words()).title)).toContain(
      'The Ferry Comes In Late',
    );
  });

  test('keeps words separate on both sides of a part that is left out', async () => {
    const shared = '<p>Old salt<span class="social">Share</span>pans lie by the quay.</p>';
    const at = await openOverlayPage(
      await context.newPage(),
      news.replace('<x-note>', `${shared}<x-note>`),
      undefined,
      null,
    );
    expect(await scopeOf(at)).toBe('story');
    const keys = (await at.keys()).split(' ');
    expect(keys).toEqual(expect.arrayContaining(['salt', 'pans']));
    expect(keys).not.toContain('saltpans');
    expect(keys.join()).not.toMatch(/share/i);
  });

  test('can be switched to the whole page and back at once, without requesting known words again', async () => {
    const at = await openOverlayPage(await context.newPage(), news, undefined, null);
    const setScope = (scope: 'story' | 'page' | 'selection') =>
      at.page.evaluate((kind) => wordreachTest.overlay.setScope(kind), scope);
    const asked = () => at.page.evaluate(() => wordreachTest.asked.flat());
    expect(await setScope('page')).toBe('page');
    expect(await at.marked()).toContain('Tides Sport The Ferry');
    const keys = await asked();
    expect(new Set(keys).size).toBe(keys.length);
    expect(await setScope('story')).toBe('story');
    expect(await at.marked()).not.toContain('Tides');
    expect(await asked()).toEqual(keys);
  });

  test('is not found on a page with little text', async () => {
    const at = await openOverlayPage(
      await context.newPage(),
      '<!doctype html><body><nav>Tides</nav><p>A ferry.',
      undefined,
      null,
    );
    expect(await scopeOf(at)).toBe('page');
    expect(await at.keys()).toBe('tides a ferry');
  });

  test('is found when it arrives late, and again after a navigation within the page', async () => {
    const at = await openOverlayPage(
      await context.newPage(),
      '<!doctype html><body><nav>Tides</nav><main>Loading</main>',
      undefined,
      null,
    );
    expect(await scopeOf(at)).toBe('page');
    const fill = (words: string) =>
      at.page.evaluate(async (text) => {
        const followed = wordreachTest.nextChange();
        document.querySelector('main')!.innerHTML = `<article>${`<p>${text}</p>`.repeat(30)}</article>`;
        await followed;
      }, words);
    await fill('The crab, a small one, ran over the wet sand and hid under a stone.');
    expect(await scopeOf(at)).toBe('story');
    expect(await at.keys()).not.toContain('tides');
    await fill('A seal, an old one, lay on the rocks in the sun and would not move.');
    expect(await scopeOf(at)).toBe('story');
    expect(await at.keys()).toContain('seal×30');
    expect(await at.keys()).not.toContain('crab');
  });

  test('includes text added later to the story, but not to other parts of the page', async () => {
    const at = await openOverlayPage(await context.newPage(), news, undefined, null);
    await at.change(() => {
      const line = (textContent: string) => Object.assign(document.createElement('p'), { textContent });
      document.querySelector('aside')!.append(line('Yachts'));
      document.querySelector('#content')!.append(line('Lanterns'));
    });
    expect(await at.keys()).toContain('lanterns');
    expect(await at.keys()).not.toContain('yachts');
  });
});

describe('the selection', () => {
  test('is read in whole words, over several blocks', async () => {
    const at = await openOverlayPage(await context.newPage(), news);
    await at.page.evaluate(() => {
      const [first, second] = document.querySelectorAll('p');
      getSelection()!.setBaseAndExtent(first!.firstChild!, 6, second!.firstChild!, 9);
    });
    expect(await at.page.evaluate(async () => (await wordreachTest.overlay.words()).selection)).toBe(true);
    expect(await at.page.evaluate(() => wordreachTest.overlay.setScope('selection'))).toBe('selection');
    const marked = await at.marked();
    expect(marked.startsWith('ferry came in late')).toBe(true);
    expect(marked.endsWith('dark The ferry')).toBe(true);
  });

  test('that is removed from the page gives way to the main story', async () => {
    const at = await openOverlayPage(await context.newPage(), news);
    await at.page.evaluate(() => getSelection()!.selectAllChildren(document.querySelector('p')!));
    await at.page.evaluate(() => wordreachTest.overlay.setScope('selection'));
    await at.change(() => document.querySelector('p')!.remove());
    expect(await scopeOf(at)).toBe('story');
  });

  test('has no words when nothing is selected', async () => {
    const at = await openOverlayPage(await context.newPage(), news);
    expect(await at.page.evaluate(() => wordreachTest.overlay.setScope('selection'))).toBe('selection');
    expect(await at.keys()).toBe('');
  });
});

describe('a page that keeps changing', () => {
  test('is read except for the part that rewrites itself', async () => {
    const at = await openOverlayPage(
      await context.newPage(),
      '<!doctype html><body><p id="news">Tides</p><p id="still">Calm sea</p>',
    );
    await at.page.evaluate(async () => {
      const news = document.querySelector('#news')!;
      for (let n = 0; n < 60; n++) {
        news.textContent = `Tides ${'a'.repeat(n + 1)}`;
        await new Promise(requestAnimationFrame);
      }
    });
    const isRestless = () => at.page.evaluate(async () => (await wordreachTest.overlay.words()).restless);
    await expect.poll(isRestless, { timeout: 20_000 }).toBe(true);
    expect(await at.marked()).toBe('Calm sea');
    await at.change(() => {
      document.querySelector('#still')!.textContent = 'Calm bay';
    });
    expect(await at.marked()).toBe('Calm bay');
    expect(await at.keys()).toBe('calm bay');
  });

  test('is read as long as the reader acts on it', async () => {
    const at = await openOverlayPage(
      await context.newPage(),
      '<!doctype html><body style="height:9000px"><p id="news">Tides</p>',
    );
    await at.page.evaluate(async () => {
      const news = document.querySelector('#news')!;
      for (let n = 0; n < 60; n++) {
        dispatchEvent(new Event('scroll'));
        news.textContent = `Tides ${'a'.repeat(n + 1)}`;
        await new Promise(requestAnimationFrame);
      }
      await wordreachTest.overlay.rejudge();
    });
    expect(await at.page.evaluate(async () => (await wordreachTest.overlay.words()).restless)).toBe(false);
    expect(await at.marked()).toBe(`Tides ${'a'.repeat(60)}`);
  });

  test('keeps its marks when only its style changes', async () => {
    const at = await openOverlayPage(await context.newPage(), '<!doctype html><body><p>Tides</p>');
    await at.page.evaluate(async () => {
      for (let n = 0; n < 60; n++) {
        document.body.style.opacity = String(0.5 + n / 200);
        await new Promise(requestAnimationFrame);
      }
      await wordreachTest.overlay.rejudge();
    });
    expect(await at.marked()).toBe('Tides');
    expect(await at.page.evaluate(async () => (await wordreachTest.overlay.words()).restless)).toBe(false);
  });
});

describe('text shown or hidden by a style alone', () => {
  test('is read or dropped after a box is ticked, the window is narrowed or a style sheet arrives late', async () => {
    const at = await openOverlayPage(
      await context.newPage(),
      `<!doctype html><style>input:not(:checked) ~ .more { display: none }
        @media (max-width: 600px) { .wide { display: none } }</style>
        <body><p>Calm</p><input type="checkbox"><p class="more">sea</p><p class="wide">bay</p>`,
    );
    expect(await at.marked()).toBe('Calm bay');
    const asked = await at.page.evaluate(() => wordreachTest.asked.length);
    await at.page.click('input');
    await expect.poll(at.marked).toBe('Calm sea bay');
    await at.page.setViewportSize({ width: 500, height: 700 });
    await expect.poll(at.keys).toBe('calm sea');
    expect(await at.marked()).toBe('Calm sea');
    expect(await at.page.evaluate(() => wordreachTest.asked.length)).toBe(asked + 1);
  });
});

describe('the report of drawn text', () => {
  test.each([
    ['a canvas', '<canvas width="900" height="600"></canvas>', 'canvas'],
    [
      'a picture',
      '<img width="900" height="600" src="data:image/gif;base64,R0lGODlhAQABAAAAACw=">',
      'picture',
    ],
    [
      'a small picture',
      '<img width="90" height="60" src="data:image/gif;base64,R0lGODlhAQABAAAAACw=">',
      null,
    ],
    ['words', '<p>Calm sea', null],
  ] as const)('is correct for a page with %s', async (_what, body, drawn) => {
    const at = await openOverlayPage(await context.newPage(), `<!doctype html><body>${body}`);
    expect(await at.page.evaluate(async () => (await wordreachTest.overlay.words()).drawn)).toBe(drawn);
  });
});

describe('the sentence of a word', () => {
  test('is found over elements and source line breaks, with the exact place of the word', async () => {
    const at = await openOverlayPage(
      await context.newPage(),
      '<!doctype html><body><p>A gull cried. The <i>fer</i>ry\ncame in! Otto ran.',
    );
    const found = await at.page.evaluate(() => wordreachTest.overlay.sentence({ key: 'ferry', n: 0 }));
    expect(found).toMatchObject({ sentence: 'The ferry came in! ' });
    expect(found!.sentence.slice(found!.start, found!.end)).toBe('ferry');
    expect(await at.page.evaluate(() => wordreachTest.overlay.sentence({ key: 'whale', n: 0 }))).toBeNull();
  });
});

describe('the word finder', () => {
  test('finds the word under the pointer, even in a shadow root, and no word beside the text', async () => {
    const at = await openOverlayPage(
      await context.newPage(),
      '<!doctype html><body style="font:20px monospace;margin:0"><p style="margin:0">Calm sea<div></div>',
      () => {
        const root = document.querySelector('div')!.attachShadow({ mode: 'open' });
        root.innerHTML = '<p style="margin:0">high <b>ti</b>de';
      },
    );
    const wordAt = (x: number, y: number) =>
      at.page.evaluate(([x, y]) => wordreachTest.overlay.finder.at(x!, y!)?.key ?? null, [x, y]);
    expect(await wordAt(70, 10)).toBe('sea');
    expect(await wordAt(10, 10)).toBe('Calm^');
    expect(await wordAt(600, 10)).toBeNull();
    expect(await wordAt(10, 300)).toBeNull();
    expect(await wordAt(66, 34)).toBe('tide');
    expect(await wordAt(100, 34)).toBe('tide');
  });

  test('goes from word to word in both directions, and around the end of the page', async () => {
    const at = await openOverlayPage(
      await context.newPage(),
      '<!doctype html><body><p>Calm <i>sea</i><p>high tide',
    );
    const walk = (direction: 1 | -1, steps: number) =>
      at.page.evaluate(
        ([direction, steps]) => {
          const found: string[] = [];
          let word: Parameters<typeof wordreachTest.overlay.finder.next>[0] = null;
          for (let n = 0; n < steps!; n++) {
            word = wordreachTest.overlay.finder.next(word, direction as 1 | -1, ({ key }) => key !== 'high');
            found.push(word!.key);
          }
          return found.join(' ');
        },
        [direction, steps],
      );
    expect(await walk(1, 4)).toBe('Calm^ sea tide Calm^');
    expect(await walk(-1, 3)).toBe('Calm^ tide sea');
  });
});
