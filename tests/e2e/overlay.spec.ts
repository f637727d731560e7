import { readFileSync } from 'node:fs';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { startPlainBrowser } from './browser.ts';
import { openOverlayPage } from './overlay-page.ts';

let context: BrowserContext;
/** All table tests with short texts share one page. A test that changes its page opens a new page. */
let reader: Page;
beforeAll(async () => {
  const browser = await startPlainBrowser();
  context = await browser.newContext();
  reader = await context.newPage();
});
afterEach(async () => {
  for (const page of context.pages()) if (page !== reader) await page.close();
});
afterAll(() => context?.browser()?.close());

/** Returns the marked pieces and the keys of a page with this body. */
async function read(body: string, before?: () => void): Promise<{ marked: string; keys: string }> {
  const at = await openOverlayPage(reader, `<!doctype html><body>${body}`, before);
  const found = { marked: await at.marked(), keys: await at.keys() };
  await at.stop();
  return found;
}

describe('words and elements', () => {
  test.each([
    ['link in mid word', '<p>His mo<a href="#">ther</a> waved', 'His mo ther waved', 'his mother waved'],
    ['drop cap', '<p><span style="float:left">T</span>arn Quay', 'T arn Quay', 'tarn Quay'],
    [
      'letters set one by one',
      '<p><span style="display:inline-block">S</span><span style="display:inline-block">ea</span> air',
      'S ea air',
      'sea air',
    ],
    ['place to break a line', '<p>A light<wbr>house', 'A light house', 'a lighthouse'],
    ['word broken over lines', '<p>The chil-<br>dren hid', 'The chil- dren hid', 'the children hid'],
    ['word broken over lines of the source', '<p>A har-<br>\nbour', 'A har- \nbour', 'a harbour'],
    ['soft hyphens', '<p>A har&shy;bour', 'A har\u00ADbour', 'a harbour'],
    ['comment in mid word', '<p>A ha<!-- -->ven', 'A ha ven', 'a haven'],
    ['hidden letters', '<p>A ha<span hidden>zzz</span>ven', 'A ha ven', 'a haven'],
    ['element without a box', '<p>A ha<x-y style="display:contents">ve</x-y>n', 'A ha ve n', 'a haven'],
    ['unknown element in the line', '<p>A ha<x-y>ven</x-y>', 'A ha ven', 'a haven'],
  ])('one word continues across this markup: %s', async (_what, body, marked, keys) => {
    expect(await read(body)).toEqual({ marked, keys });
  });

  test.each([
    ['line break', '<p>the quay<br>wall', 'the quay wall', 'the quay wall'],
    ['line break behind a hyphen', '<p>the net-<br>Wall', 'the net Wall', 'the net wall'],
    ['blocks', '<div>the quay<div>wall</div>top</div>', 'the quay wall top', 'the quay wall top'],
    ['table cells', '<table><tr><td>nets<td>ropes</table>', 'nets ropes', 'nets ropes'],
    ['footnote mark', '<p>the sea<sup>ab</sup>bed', 'the sea ab bed', 'the sea ab bed'],
    ['picture', '<p>net<img alt="of">work', 'net work', 'net work'],
    ['buttons side by side', '<button>Shut</button><button>Open</button>', 'Shut Open', 'shut open'],
    [
      'boxes side by side',
      '<a style="display:inline-block">Home</a><a style="display:inline-block">News</a>',
      'Home News',
      'home news',
    ],
    ['floating note', '<p>the<span style="float:right">note</span> pier', 'the note pier', 'the note pier'],
    ['code in the line', '<p>net<code>x()</code>work', 'net work', 'net work'],
  ])('this markup separates words: %s', async (_what, body, marked, keys) => {
    expect(await read(body)).toEqual({ marked, keys });
  });

  test('a source line break starts no sentence, but a line break kept by a style starts a line of verse', async () => {
    expect(await read('<p>We met\n  Bram')).toEqual({ marked: 'We met Bram', keys: 'we met Bram' });
    expect(await read('<p style="white-space:pre-line">We met\n  Tides')).toEqual({
      marked: 'We met Tides',
      keys: 'we met tides',
    });
  });

  test('a footnote mark or a picture starts no sentence', async () => {
    expect((await read('<p>Then <img> Bram met<sup>2</sup> Ines')).keys).toBe('then Bram met Ines');
    const box = '<a style="display:inline-block">Bram</a>';
    expect((await read(`<p>Then ${box} met Ines`)).keys).toBe('then Bram met Ines');
  });
});

describe('reading a page', () => {
  test.each([
    ['<script>var tides</script>'],
    ['<style>tides{}</style>'],
    ['<noscript>tides</noscript>'],
    ['<template><p>tides</p></template>'],
    ['<pre>tides</pre>'],
    ['<kbd>tides</kbd>'],
    ['<textarea>tides</textarea>'],
    ['<input value="tides">'],
    ['<select><option>tides</select>'],
    ['<div contenteditable>tides <b>turn</b></div>'],
    ['<svg><text>tides</text></svg>'],
    ['<div hidden>tides</div>'],
    ['<div style="display:none">tides</div>'],
    ['<div style="visibility:hidden">tides <b>turn</b></div>'],
    ['<div style="display:none"><b style="display:contents">tides</b></div>'],
    ['<div style="content-visibility:hidden">tides</div>'],
    ['<details><summary></summary>tides</details>'],
    ['<audio>tides</audio>'],
    ['<ruby><rt>tides</rt></ruby>'],
  ])('%s', async (body) => {
    expect(await read(`<p>Calm</p>${body}<p>sea</p>`)).toEqual({ marked: 'Calm sea', keys: 'calm sea' });
  });

  test('reads visible text inside a hidden element', async () => {
    const { marked } = await read('<p style="visibility:hidden">Calm <b style="visibility:visible">sea</b>');
    expect(marked).toBe('sea');
  });
});

describe('shadow roots', () => {
  test('are read in their place on the page, together with the content of their slots', async () => {
    const { keys } = await read(
      '<p>A <x-term>ha</x-term>ven</p><x-card>lost<b slot="b">two</b></x-card>',
      () => {
        document.querySelector('x-term')!.attachShadow({ mode: 'open' }).innerHTML = '<i><slot></slot></i>';
        document.querySelector('x-card')!.attachShadow({ mode: 'open' }).innerHTML =
          '<p>one</p><p><slot name="b">spare</slot></p><p><slot name="c">three</slot></p>';
      },
    );
    expect(keys).toBe('a haven one two three');
  });

  test('have a style sheet for their text, and are no longer read once their host is removed', async () => {
    const at = await openOverlayPage(await context.newPage(), '<p>Calm<div><x-card></x-card></div>', () => {
      document.querySelector('x-card')!.attachShadow({ mode: 'open' }).innerHTML = '<p>sea</p>';
    });
    expect(await at.keys()).toBe('calm sea');
    expect(
      await at.page.evaluate(() => document.querySelector('x-card')!.shadowRoot!.adoptedStyleSheets.length),
    ).toBe(1);
    await at.change(() => {
      document.querySelector('x-card')!.shadowRoot!.querySelector('p')!.textContent = 'swell';
    });
    expect(await at.keys()).toBe('calm swell');
    await at.change(() => document.querySelector('div')!.remove());
    expect(await at.keys()).toBe('calm');
  });
});

test('a frame removed from the page is reported, so that its words are no longer counted', async () => {
  const at = await openOverlayPage(
    await context.newPage(),
    '<p>Calm<section><iframe srcdoc="<p>sea"></iframe></section>',
  );
  // The promise of `at.change` resolves only if the overlay reports the removed frame.
  await at.change(() => document.querySelector('section')!.remove());
  expect(await at.keys()).toBe('calm');
});

describe('a page that changes', () => {
  const changes: [string, string, () => void, string][] = [
    [
      'text edited',
      '<p>The tide',
      () => {
        document.querySelector('p')!.firstChild!.nodeValue = 'A swell';
      },
      'A swell',
    ],
    [
      'text replaced',
      '<p>The tide',
      () => {
        document.querySelector('p')!.textContent = 'A swell';
      },
      'A swell',
    ],
    [
      'block added',
      '<p>The tide',
      () => document.body.append(Object.assign(document.createElement('p'), { textContent: 'turns' })),
      'The tide turns',
    ],
    ['block removed', '<p>The tide<p>turns', () => document.querySelector('p')!.remove(), 'turns'],
    [
      'word removed from a line',
      '<p>The <b>low</b> tide turns',
      () => document.querySelector('b')!.remove(),
      'The tide turns',
    ],
    [
      'only word of an inline element removed',
      '<p><b>low</b> <i>tide</i>',
      () => document.querySelector('b')!.remove(),
      'tide',
    ],
    [
      'letters added to a word',
      '<p>The tide<b></b>',
      () => document.querySelector('b')!.append('s'),
      'The tide s',
    ],
    [
      'word hidden in a line',
      '<p>The <b>low</b> tide',
      () => {
        document.querySelector('b')!.hidden = true;
      },
      'The tide',
    ],
    [
      'block hidden',
      '<p>The<p>tide',
      () => {
        document.querySelector('p')!.hidden = true;
      },
      'tide',
    ],
    [
      'block shown',
      '<p hidden>The<p>tide',
      () => {
        document.querySelector('p')!.hidden = false;
      },
      'The tide',
    ],
    [
      'word made a block',
      '<p>The <b>low</b> tide',
      () => {
        document.querySelector('b')!.style.display = 'block';
      },
      'The low tide',
    ],
    [
      'part moved',
      '<p>The</p><p>tide</p>',
      () => document.body.append(document.querySelector('p')!),
      'tide The',
    ],
    [
      'details opened',
      '<details><summary>The</summary>tide</details>',
      () => {
        document.querySelector('details')!.open = true;
      },
      'The tide',
    ],
    [
      'text split by another script',
      '<p>The tide turns',
      () => void (document.querySelector('p')!.firstChild as Text).splitText(6),
      'The ti de turns',
    ],
    [
      'fields and scripts beside text',
      '<p>The tide',
      () => {
        document.body.append(
          Object.assign(document.createElement('script'), { textContent: '/* no words */' }),
          document.createElement('textarea'),
          Object.assign(document.createElement('p'), { textContent: 'turns' }),
        );
      },
      'The tide turns',
    ],
  ];
  test.each(changes)('%s', async (_what, body, how, marked) => {
    const at = await openOverlayPage(await context.newPage(), `<!doctype html><body>${body}`);
    await at.change(how);
    expect(await at.marked()).toBe(marked);
    const fresh = await read(await at.page.evaluate(() => document.body.innerHTML));
    expect((await at.keys()).split(' ').sort()).toEqual(fresh.keys.split(' ').sort());
  });

  test('makes the overlay request only the new words', async () => {
    const at = await openOverlayPage(await context.newPage(), '<!doctype html><body><p>The tide<p>turns');
    await at.change(() => {
      document.querySelector('p')!.textContent = 'The swell';
    });
    expect(await at.page.evaluate(() => wordreachTest.asked)).toEqual([['the', 'tide', 'turns'], ['swell']]);
  });

  test('is not read again when only style sheets or scripts are added', async () => {
    const at = await openOverlayPage(await context.newPage(), '<!doctype html><body><p>The tide');
    await at.page.evaluate(async () => {
      let changes = 0;
      void wordreachTest.nextChange().then(() => changes++);
      document.head.append(document.createElement('style'));
      document.body.append(document.createElement('script'));
      await null; // the browser reports the change first
      await wordreachTest.overlay.rejudge();
      if (changes > 0) throw new Error('read again');
    });
  });

  test('stays shaded after a request fails', async () => {
    const at = await openOverlayPage(await context.newPage(), '<!doctype html><body><p>The tide');
    await at.page.evaluate(async () => {
      wordreachTest.refuses = true;
      await wordreachTest.overlay.rejudge().then(
        () => {
          throw new Error('no error was told');
        },
        () => undefined,
      );
      wordreachTest.refuses = false;
    });
    await at.change(() => document.body.append(' turns'));
    expect(await at.marked()).toBe('The tide turns');
  });

  test('that is long is read to its end although one request on the way fails', async () => {
    const letters = [...'abcdefghij'];
    const words = letters.flatMap((a) => letters.flatMap((b) => letters.map((c) => `${a}o${b}e${c}a`)));
    const at = await openOverlayPage(await context.newPage(), '<!doctype html><body><p>The tide');
    const asked = await at.page.evaluate(async (words) => {
      document.body.innerHTML = words.map((word) => `<p>${word}</p>`).join('');
      wordreachTest.refuses = 'fofefa';
      wordreachTest.asked.length = 0;
      const failed = await wordreachTest.overlay.setScope('page').then(
        () => false,
        () => true,
      );
      return { failed, words: wordreachTest.asked.flat(), requests: wordreachTest.asked.length };
    }, words);
    expect(asked.failed).toBe(true);
    expect(asked.words).toContain(words[0]);
    expect(asked.words).toContain(words.at(-1));
    expect(asked.words).not.toContain('fofefa');
    expect(asked.requests).toBeGreaterThan(1);
    expect((await at.keys()).split(' ')).toHaveLength(words.length);
  });

  test('has its new words counted, and its replaced words dropped, while requests fail', async () => {
    const at = await openOverlayPage(await context.newPage(), '<!doctype html><body><p>The tide');
    await at.page.evaluate(() => {
      wordreachTest.refuses = true;
      document.querySelector('p')!.textContent = 'The whale';
    });
    await expect.poll(at.keys).toBe('the whale');
    await at.page.evaluate(async () => {
      wordreachTest.refuses = false;
      await wordreachTest.overlay.rejudge();
    });
    expect(await at.marked()).toBe('The whale');
  });
});

describe('going to a place of a word', () => {
  test('shows and marks the n-th place, and finds nothing for a word that is not on the page', async () => {
    const far = '<div style="height:3000px"></div>';
    const at = await openOverlayPage(
      await context.newPage(),
      `<!doctype html><body><p>The tide${far}<p>The Tide${far}`,
    );
    await at.page.emulateMedia({ reducedMotion: 'reduce' });
    const goTo = (key: string, n: number) =>
      at.page.evaluate(
        ([key, n]) => {
          const found = wordreachTest.overlay.goTo({ key: key as string, n: n as number });
          const here = [...(CSS.highlights.get('wr-4') ?? [])] as StaticRange[];
          return {
            found,
            at: here.map(({ startContainer, startOffset, endOffset }) =>
              (startContainer as Text).data.slice(startOffset, endOffset),
            ),
            down: scrollY > 1000,
          };
        },
        [key, n],
      );
    expect(await goTo('tide', 1)).toEqual({ found: 2, at: ['Tide'], down: true });
    expect(await goTo('tide', 0)).toEqual({ found: 2, at: ['tide'], down: false });
    expect(await goTo('tide', 2)).toMatchObject({ found: 2, down: false });
    expect(await goTo('swell', 0)).toMatchObject({ found: 0 });
  });
});

describe('a page much longer than the view', () => {
  test('has all its words counted, words near the view marked, and marks that follow the reader', async () => {
    const far = '<div style="height:30000px"></div>';
    const at = await openOverlayPage(
      await context.newPage(),
      `<!doctype html><body><p>The tide${far}<p id="end">turns</p><div style="height:200px;overflow:auto"><p>low${far}`,
    );
    expect(await at.keys()).toBe('the tide turns low');
    expect(await at.marked()).toBe('The tide');
    await at.page.evaluate(() => document.querySelector('#end')!.scrollIntoView());
    await expect.poll(at.marked).toBe('turns low');
    await at.change(() => {
      document.querySelector('#end')!.textContent = 'ebbs';
    });
    expect(await at.marked()).toBe('ebbs low');
    await at.page.evaluate(() => scrollTo(0, 0));
    await expect.poll(at.marked).toBe('The tide');
  });

  test('has marks near the view when it is filled after it was read empty', async () => {
    const at = await openOverlayPage(await context.newPage(), '<!doctype html><body><main></main>');
    await at.change(() => {
      document.querySelector('main')!.innerHTML =
        '<p>The tide</p><div style="height:30000px"></div><p>turns</p>';
    });
    expect(await at.keys()).toBe('the tide turns');
    expect(await at.marked()).toBe('The tide');
  });
});

describe('a book in one text node, as browsers show a plain text file', () => {
  const lines = Array.from({ length: 3000 }, (_, n) => `The tide of day ${n} took the gulls over the bar.`);
  const html = `<!doctype html><body><pre style="white-space: pre-wrap">${lines.join('\n')}`;
  /** Returns the number of marked words, and the range of text offsets that the marked words cover. */
  const marked = () => {
    let count = 0;
    const offsets: number[] = [];
    for (const highlight of CSS.highlights.values())
      for (const range of highlight) {
        count++;
        offsets.push(range.startOffset);
      }
    return { count, from: Math.min(...offsets), to: Math.max(...offsets) };
  };

  test('is marked near the view, and nowhere else', async () => {
    const { page } = await openOverlayPage(await context.newPage(), html);
    const top = await page.evaluate(marked);
    expect(top.from).toBe(0);
    expect(top.count).toBeLessThan(1500);
    await page.evaluate(() => scrollTo(0, document.documentElement.scrollHeight));
    const end = lines.join('\n').lastIndexOf('bar');
    await expect.poll(async () => (await page.evaluate(marked)).to, { timeout: 10_000 }).toBe(end);
    const bottom = await page.evaluate(marked);
    expect(bottom.count).toBeLessThan(1500);
    expect(bottom.from).toBeGreaterThan(top.to);
    await page.evaluate(() => scrollTo(0, 0));
    await expect.poll(() => page.evaluate(marked), { timeout: 10_000 }).toEqual(top);
  });

  test('has more of its words marked for printing, and the same words as before once printing ends', async () => {
    const { page } = await openOverlayPage(await context.newPage(), html);
    const top = await page.evaluate(marked);
    await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
    expect((await page.evaluate(marked)).count).toBeGreaterThan(2 * top.count);
    await page.evaluate(() => dispatchEvent(new Event('afterprint')));
    expect(await page.evaluate(marked)).toEqual(top);
  });
});

describe('on the long article', () => {
  const html = readFileSync(new URL('../pages/article.html', import.meta.url), 'utf8');

  // Outside source: innerText (HTML Standard), the browser's own account of the drawn text. The test compares the
  // marked text with innerText letter by letter.
  test('every letter that the browser draws is marked, and no other letter', async () => {
    const page = await context.newPage();
    // The window is high enough for the whole page to be near the view, whatever the fonts.
    await page.setViewportSize({ width: 1280, height: 4000 });
    const at = await openOverlayPage(page, html);
    const letters = (text: string) =>
      text
        .normalize('NFC')
        .toLowerCase()
        .replace(/[^\p{L}]/gu, '');
    const marked = letters(await at.marked());
    const drawn = await at.page.evaluate(() => {
      for (const left of document.querySelectorAll('pre, textarea, input, [contenteditable]')) left.remove();
      // biome-ignore lint/performance/useDomNodeTextContent: the question is about drawn text
      return document.body.innerText;
    });
    expect(marked).toBe(letters(drawn.replace('quay@tarnquay.example', '').replaceAll('Mr.', '')));
  });

  test('shading leaves the source of the page unchanged, both while it is on and after it is stopped', async () => {
    const at = await openOverlayPage(await context.newPage(), html);
    const source = () => at.page.evaluate(() => document.documentElement.outerHTML);
    const clean = await context.newPage();
    await clean.setContent(html);
    const before = await clean.evaluate(() => document.documentElement.outerHTML);
    expect(await source()).toBe(before);
    await at.stop();
    expect(await source()).toBe(before);
    expect(await at.page.evaluate(() => CSS.highlights.size)).toBe(0);
    const asked = await at.page.evaluate(async () => {
      const before = wordreachTest.asked.length;
      document.body.append(' swell');
      await wordreachTest.overlay.rejudge();
      return wordreachTest.asked.length - before;
    });
    expect(asked).toBe(0);
    expect(await at.marked()).toBe('');
  });
});
