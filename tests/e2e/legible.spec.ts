import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { createPicker } from '../../src/lesson/picker.ts';
import { startPlainBrowser } from './browser.ts';
import { type OverlayPage, openOverlayPage } from './overlay-page.ts';

let context: BrowserContext;
/**
 * One tab shows one page after the other, because a new tab takes a second. Tests that change more than the page have a
 * tab of their own.
 */
let tab: Page;
beforeAll(async () => {
  const browser = await startPlainBrowser();
  context = await browser.newContext({ viewport: { width: 600, height: 200 } });
  tab = await context.newPage();
});
afterEach(async () => {
  for (const page of context.pages()) if (page !== tab) await page.close();
});
afterAll(() => context?.browser()?.close());

/** Colours of a text and its background. */
const SCHEMES: readonly (readonly [name: string, style: string])[] = [
  ['black on white', 'background:#fff;color:#000'],
  ['dark grey on white', 'background:#fff;color:#333'],
  ['grey on white', 'background:#fff;color:#767676'],
  ['white on black', 'background:#000;color:#fff'],
  ['light on dark grey', 'background:#1b1f23;color:#d7dde3'],
  ['sepia', 'background:#f4ecd8;color:#433422'],
  ['navy', 'background:#0b1f45;color:#f3f6ff'],
  ['green on black', 'background:#000;color:#33ff66'],
  ['yellow ground', 'background:#ffe94a;color:#222'],
  ['red ground', 'background:#8b1a1a;color:#fff'],
  ['orange like the wash', 'background:#f0c9b0;color:#1d1d1d'],
  ['teal ground', 'background:#0f5c52;color:#fff'],
  ['blue links', 'background:#fff;color:#0645ad'],
  ['see-through body on a dark page', 'color:#eee'],
  ['gradient', 'background:linear-gradient(#fff,#dfe8ff);color:#102030'],
];

type Standing = 'beyond' | 'soon' | 'fresh' | 'unsure';

/**
 * Opens a page with one word, marked as asked, in the one tab unless another is given. The word has no descenders, so
 * that only the underline is below the letters. Before the word there are black words on white in the same font, which
 * are marked too, because Chromium then tends to take one colour for both.
 */
async function marked(style: string, standing: Standing, on = tab): Promise<OverlayPage> {
  const html = `<!doctype html><style>html{background:${style.includes('background') ? '#fff' : '#101418'}}
    body{margin:0;font:700 48px/2 sans-serif}p{margin:0;padding:20px}</style>
    <header style="position:absolute;right:0;background:#fff;color:#000">calm</header><main style="${style}"><p>mnmnm`;
  // The tab must open another document, since the marks stay on the same document.
  await on.goto('about:blank');
  return openOverlayPage(on, html, undefined, 'page', standing);
}

type Colour = readonly [number, number, number];

/**
 * Returns the colours in a screenshot of the word: its background, its letters, its underline, and the background below
 * the underline.
 */
async function colours(
  page: Page,
): Promise<{ ground: Colour; letters: Colour; line: Colour; below: Colour }> {
  const { box, baseline } = await page.evaluate(() => {
    const word = document.querySelector('p')!;
    const range = document.createRange();
    range.selectNodeContents(word);
    const { left, top, width, height } = range.getBoundingClientRect();
    const canvas = document.createElement('canvas').getContext('2d')!;
    canvas.font = getComputedStyle(word).font;
    const baseline = Math.ceil(canvas.measureText('m').fontBoundingBoxAscent);
    return { box: { x: left, y: top, width, height: height + 20 }, baseline };
  });
  const picture = (await page.screenshot({ clip: box })).toString('base64');
  return page.evaluate(
    async ({ data, baseline }) => {
      const image = await createImageBitmap(await (await fetch(`data:image/png;base64,${data}`)).blob());
      const { width, height } = image;
      const drawing = new OffscreenCanvas(width, height).getContext('2d')!;
      drawing.drawImage(image, 0, 0);
      const { data: pixels } = drawing.getImageData(0, 0, width, height);
      type Pixel = [number, number, number];
      const at = (x: number, y: number): Pixel =>
        [...pixels.subarray((y * width + x) * 4, (y * width + x) * 4 + 3)] as Pixel;
      const far = (a: Pixel, b: Pixel) => Math.hypot(...a.map((value, i) => value - b[i]!));
      const farthest = (from: Pixel, top: number, bottom: number) => {
        let best = from;
        for (let y = top; y < bottom; y++)
          for (let x = 0; x < width; x++) if (far(at(x, y), from) > far(best, from)) best = at(x, y);
        return best;
      };
      // This point is left of the first letter, above the baseline.
      const ground = at(0, baseline - 8);
      const below = at(0, height - 1);
      return {
        ground,
        letters: farthest(ground, baseline - 20, baseline - 2),
        line: farthest(below, baseline + 5, height),
        below,
      };
    },
    { data: picture, baseline },
  );
}

/** Returns the contrast of two colours (WCAG 2.2, relative luminance). */
function contrast(a: Colour, b: Colour): number {
  const luminance = (colour: Colour): number => {
    const [r, g, b] = colour.map((value) => {
      const part = value / 255;
      return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
  };
  const [light, dark] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (light! + 0.05) / (dark! + 0.05);
}

describe('the contrast measured in screenshots', () => {
  test.each(SCHEMES)('is enough for text and underlines: %s', async (_name, style) => {
    const plain = await marked(style, 'beyond');
    await plain.stop();
    const own = await colours(tab);
    const before = contrast(own.letters, own.ground);
    for (const standing of ['beyond', 'fresh', 'unsure'] as const) {
      const at = await marked(style, standing);
      const { ground, letters, line, below } = await colours(at.page);
      // WCAG 2.2, 1.4.3, asks for 4.5:1 for text. If the page itself has less, the marks may not lower the contrast,
      // except by the rounding of colours.
      expect(contrast(letters, ground), `${standing}: text`).toBeGreaterThanOrEqual(
        Math.min(4.5, before - 0.1),
      );
      // WCAG 2.2, 1.4.11, asks for 3:1 for marks that carry meaning.
      for (const beside of [ground, below])
        expect(contrast(line, beside), `${standing}: underline`).toBeGreaterThanOrEqual(3);
    }
  });
});

/**
 * These tests use random light and dark colours of letters and backgrounds, many of them just legible. Some letters or
 * backgrounds are half transparent, some backgrounds are pictures, and some words are in drawings. Each word is
 * measured as it is drawn, without marks and with marks.
 */
describe('on random colours', () => {
  const { below } = createPicker(2026, 'colours');
  const random = (): Colour => [below(256), below(256), below(256)];
  const css = (colour: Colour, share = 1): string => `rgb(${colour.join(' ')} / ${share})`;
  /** Returns two colours that differ enough for legible text. Most pairs are hardly more than legible. */
  const pair = (): { letters: Colour; ground: Colour } => {
    for (;;) {
      const [letters, ground] = [random(), random()];
      const ratio = contrast(letters, ground);
      if (ratio >= 4.5 && (ratio < 6 || below(20) === 0)) return { letters, ground };
    }
  };
  const WORDS = 120;
  const words = Array.from({ length: WORDS }, pair);
  const html = `<!doctype html><style>body{margin:0;background:#fff;font:700 24px/1 sans-serif}
    p{margin:0;height:40px;width:100px;float:left;overflow:hidden}</style>${words
      .map(
        ({ letters, ground }, n) =>
          [
            `<p style="background:${css(ground)};color:${css(letters)}">mnmnm`,
            `<p style="background:${css(ground)}"><span style="background:${css(letters, 0.1)};color:${css(letters, 0.95)}">mnmnm</span>`,
            `<p style="background:linear-gradient(${css(ground)}, ${css(ground)});color:${css(letters)}">mnmnm`,
            `<p style="background:${css(ground)}"><svg width="100" height="40"><text y="20" fill="${css(letters)}">mnmnm</text></svg>`,
          ][n % 4]!,
      )
      .join('')}`;

  test('legible text stays legible, and many words get a wash', async () => {
    const at = await openOverlayPage(await context.newPage(), html);
    await at.page.setViewportSize({ width: 1000, height: 480 });
    const shaded = await contrasts(at.page);
    await at.stop();
    const plain = await contrasts(at.page);
    const lost = plain.filter((before, n) => before >= 4.5 && shaded[n]! < 4.5);
    expect(plain.filter((before) => before >= 4.5).length).toBeGreaterThan(WORDS * 0.7);
    expect(lost).toEqual([]);
    expect(plain.filter((before, n) => Math.abs(before - shaded[n]!) > 0.02).length).toBeGreaterThan(20);
  });

  /**
   * Returns the contrast of each word. The most frequent colour in the word's upper part is the background, and the
   * colour farthest from the background is the letters.
   */
  async function contrasts(page: Page): Promise<number[]> {
    const picture = (await page.screenshot()).toString('base64');
    const found = await page.evaluate(
      async ({ picture, WORDS }) => {
        const blob = await (await fetch(`data:image/png;base64,${picture}`)).blob();
        const image = await createImageBitmap(blob);
        const drawing = new OffscreenCanvas(image.width, image.height).getContext('2d')!;
        drawing.drawImage(image, 0, 0);
        return Array.from({ length: WORDS }, (_, n) => {
          const { data } = drawing.getImageData((n % 10) * 100 + 4, Math.floor(n / 10) * 40 + 6, 60, 14);
          const often = new Map<string, number>();
          for (let i = 0; i < data.length; i += 4) {
            const colour = data.slice(i, i + 3).join();
            often.set(colour, (often.get(colour) ?? 0) + 1);
          }
          return [...often].sort((a, b) => b[1] - a[1]).map(([colour]) => colour.split(',').map(Number));
        });
      },
      { picture, WORDS },
    );
    return found.map(([ground, ...others]) =>
      Math.max(
        1,
        ...others.map((other) => contrast(ground as unknown as Colour, other as unknown as Colour)),
      ),
    );
  }
});

/**
 * Letters that are not painted in the colour of their text. The effect of a highlight on such letters was tried in
 * Chromium 156 and Firefox 153.
 */
const INKS: readonly (readonly [name: string, style: string])[] = [
  ['outlined', 'background:#fff;color:transparent;-webkit-text-stroke:2px #036'],
  ['outlined, white on white', 'background:#fff;color:#fff;-webkit-text-stroke:2px #036'],
  [
    'outlined, with nothing to fill them',
    'background:#fff;color:#036;-webkit-text-fill-color:transparent;-webkit-text-stroke:2px #036',
  ],
  ['filled in a colour of their own', 'background:#000;color:#000;-webkit-text-fill-color:#fff'],
  ['cut out of a ground', 'background:linear-gradient(#036,#024) text;-webkit-text-fill-color:transparent'],
];

describe('letters not painted in the colour of their text', () => {
  test.each(INKS)('%s: stay visible, and so does their underline', async (_name, style) => {
    const plain = await marked(style, 'beyond');
    await plain.stop();
    const own = await colours(tab);
    for (const standing of ['beyond', 'fresh', 'unsure'] as const) {
      const at = await marked(style, standing);
      const { ground, letters, line, below } = await colours(at.page);
      expect(contrast(letters, ground), `${standing}: text`).toBeGreaterThanOrEqual(
        Math.min(4.5, contrast(own.letters, own.ground) * 0.9),
      );
      expect(contrast(line, below), `${standing}: underline`).toBeGreaterThanOrEqual(3);
    }
  });

  test.each(['#fff', '#000'])(
    'transparent letters over a picture of text on %s stay hidden, and their underline is visible',
    async (ground) => {
      for (const style of ['color:transparent', 'color:#777;-webkit-text-fill-color:transparent'])
        for (const standing of ['beyond', 'fresh', 'unsure'] as const) {
          const at = await marked(`background:${ground};${style}`, standing);
          const found = await colours(at.page);
          expect(contrast(found.letters, found.ground), `${standing}: text`).toBeLessThan(1.1);
          expect(contrast(found.line, found.below), `${standing}: underline`).toBeGreaterThanOrEqual(3);
        }
    },
  );

  test('keep their colours when there are more colours than marks, and all mark names are neutral', async () => {
    const words = Array.from(
      { length: 30 },
      (_, i) => `<p style="-webkit-text-fill-color: rgb(0 0 ${i * 3 + 1})">Calm`,
    ).join('');
    const at = await openOverlayPage(await context.newPage(), `<!doctype html><body>${words}`);
    const names = await at.page.evaluate(() => [...CSS.highlights.keys()]);
    expect(names.length).toBeGreaterThan(5);
    expect(names.length).toBeLessThan(20);
    expect(names.every((name) => /^wr-\d+$/.test(name))).toBe(true);
    await at.stop();
    expect(await at.page.evaluate(() => CSS.highlights.size)).toBe(0);
  });

  test('get a mark for the place that is looked for, and lose the mark again', async () => {
    const at = await openOverlayPage(
      await context.newPage(),
      '<!doctype html><body><p style="color:transparent">Calm sea',
    );
    const size = () =>
      at.page.evaluate(() => [...CSS.highlights].map(([name, { size }]) => `${name}:${size}`).join(' '));
    const before = await size();
    await at.page.evaluate(() => wordreachTest.overlay.goTo({ key: 'sea', n: 0 }));
    expect(await size()).toBe(`${before} wr-7:1`);
    await expect.poll(size).toBe(`${before} wr-7:0`);
  });
});

describe('marks can be told apart', () => {
  /** Returns for each pair of pictures, in the order of `pairs`, the percentage of pixels that differ. */
  async function differences(page: Page, pictures: readonly Buffer[]): Promise<number[]> {
    return page.evaluate(
      async ({ pictures, pairs }) => {
        const drawn = await Promise.all(
          pictures.map(async (data) => {
            const image = await createImageBitmap(
              await (await fetch(`data:image/png;base64,${data}`)).blob(),
            );
            const drawing = new OffscreenCanvas(image.width, image.height).getContext('2d')!;
            drawing.drawImage(image, 0, 0);
            return drawing.getImageData(0, 0, image.width, image.height).data;
          }),
        );
        return pairs.map(([a, b]) => {
          const [one, other] = [drawn[a]!, drawn[b]!];
          let differs = 0;
          for (let i = 0; i < one.length; i += 4)
            if (
              Math.abs(one[i]! - other[i]!) +
                Math.abs(one[i + 1]! - other[i + 1]!) +
                Math.abs(one[i + 2]! - other[i + 2]!) >
              90
            )
              differs++;
          return (differs / (one.length / 4)) * 100;
        });
      },
      { pictures: pictures.map((picture) => picture.toString('base64')), pairs },
    );
  }
  const clip = { x: 20, y: 20, width: 220, height: 100 };
  const standings = ['beyond', 'soon', 'fresh', 'unsure'] as const;
  const VISIONS = ['none', 'deuteranopia', 'protanopia', 'tritanopia', 'achromatopsia'] as const;
  const pairs = standings.flatMap((_, a) => standings.slice(a + 1).map((_, i) => [a, a + 1 + i] as const));

  test('by readers with any kind of colour vision, on light and dark pages', async () => {
    for (const style of ['background:#fff;color:#222', 'background:#14181c;color:#e8e8e8']) {
      const pictures = new Map(VISIONS.map((type) => [type, [] as Buffer[]]));
      const own = await context.newPage();
      const session = await context.newCDPSession(own);
      for (const standing of standings) {
        await marked(style, standing, own);
        for (const [type, taken] of pictures) {
          await session.send('Emulation.setEmulatedVisionDeficiency', { type });
          taken.push(await own.screenshot({ clip }));
        }
      }
      for (const [type, taken] of pictures)
        for (const [n, difference] of (await differences(own, taken)).entries())
          expect(difference, `${type}: ${pairs[n]!.map((of) => standings[of]).join(', ')}`).toBeGreaterThan(
            0.5,
          );
    }
  });

  test('with forced colours, and the text stays readable', async () => {
    const pictures: Buffer[] = [];
    const page = await context.newPage();
    for (const standing of standings) {
      await page.emulateMedia({ forcedColors: 'none' });
      await marked('background:#fff;color:#222', standing, page);
      await page.emulateMedia({ forcedColors: 'active' });
      const { ground, letters } = await colours(page);
      expect(contrast(letters, ground)).toBeGreaterThanOrEqual(4.5);
      pictures.push(await page.screenshot({ clip }));
    }
    for (const difference of await differences(page, pictures)) expect(difference).toBeGreaterThan(0.5);
  });

  test('by underlines alone when underlines are chosen, and by the wash again afterwards', async () => {
    const at = await marked('background:#fff;color:#222', 'beyond');
    const washed = (await colours(at.page)).ground;
    await at.page.evaluate(() => wordreachTest.overlay.setLook('underline'));
    const bare = await colours(at.page);
    expect(bare.ground).toEqual([255, 255, 255]);
    expect(washed).not.toEqual(bare.ground);
    expect(contrast(bare.line, bare.ground)).toBeGreaterThanOrEqual(3);
    await at.page.evaluate(() => wordreachTest.overlay.setLook('wash'));
    expect((await colours(at.page)).ground).toEqual(washed);
  });
});

describe('printing a page', () => {
  test('marks the whole page, including the parts far from the view', async () => {
    const far = '<div style="height:40000px"></div>';
    const at = await openOverlayPage(await context.newPage(), `<!doctype html><body><p>Calm${far}<p>sea`);
    expect(await at.marked()).toBe('Calm');
    await at.page.evaluate(() => dispatchEvent(new Event('beforeprint')));
    expect(await at.marked()).toBe('Calm sea');
    await at.page.evaluate(() => dispatchEvent(new Event('afterprint')));
    expect(await at.marked()).toBe('Calm');
    await at.page.evaluate(() => {
      globalThis.addEventListener('beforeprint', () => {
        document.title = String(CSS.highlights.get('wr-1')?.size);
      });
    });
    await at.page.pdf();
    expect(await at.page.title(), 'the browser tells of its printing').toBe('2');
  });
});

describe('a page that removes marks', () => {
  test('gets marks again when the reader scrolls, and is left alone if it keeps removing them', async () => {
    const at = await openOverlayPage(
      await context.newPage(),
      '<!doctype html><body style="height:3000px"><p>Calm sea',
    );
    const names = () => at.page.evaluate(() => [...CSS.highlights.keys()]);
    const takeAway = () =>
      at.page.evaluate(() => {
        CSS.highlights.clear();
        document.adoptedStyleSheets = [];
      });
    const readOn = async () => {
      await at.page.evaluate(() => dispatchEvent(new Event('scroll')));
    };
    await takeAway();
    const namesReadOn = async () => {
      await readOn();
      return names();
    };
    await expect.poll(namesReadOn).toEqual(['wr-1']);
    expect(await at.page.evaluate(() => document.adoptedStyleSheets.length)).toBe(1);
    await at.page.evaluate(() => {
      addEventListener('scroll', () => setTimeout(() => CSS.highlights.clear()));
    });
    const takenAwayReadOn = async () => {
      await readOn();
      return at.page.evaluate(async () => (await wordreachTest.overlay.words()).takenAway);
    };
    await expect.poll(takenAwayReadOn, { timeout: 15_000 }).toBe(true);
    await expect.poll(names).toEqual([]);
    await readOn();
    expect(await names()).toEqual([]);
  });
});
