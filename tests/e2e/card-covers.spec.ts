import type { Frame, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { browserName, onlyIn, startBrowser, type TestBrowser } from './browser.ts';
import { openCardOn } from './framed-card.ts';

declare global {
  /** The card's frame, if a script of the page has reached it. */
  var got: HTMLIFrameElement;
  /** Changes the page every `ms` milliseconds, as far as the browser lets the page run. */
  var keepChanging: (ms: number, change: () => void) => void;
  /** Returns the longest time between two changes of `keepChanging`, in milliseconds. */
  var longestRest: () => number;
}

/** How long a card must be visible before it carries out an action, in milliseconds (serve-card.tsx). */
const REST = 500;

let browser: TestBrowser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser?.close());
beforeEach(() => browser.inBackground(() => chrome.storage.local.clear()));
afterEach(async () => {
  for (const page of browser.context.pages().slice(1)) await page.close();
});

const story = `<!doctype html><meta charset="utf-8"><title>Quay</title><body style="margin: 40px; font: 20px/1.6 serif">
  <p>The <b>lighthouse</b> keeper was hoping.</p><button>Play</button>
  <style>.cover { position: fixed; inset: 0; width: 100%; height: 100%; margin: 0; padding: 0; border: 0; background: gold; pointer-events: none;
    max-width: none; max-height: none; z-index: 2147483647 }</style>
  <template><div class="cover">Win a prize</div></template>`;

async function open(): Promise<{ page: Page; card: Frame }> {
  const page = await browser.open(browser.serve('cover.html', story));
  return { page, card: await openCardOn(browser, page) };
}

/** Returns the stored groups as text. */
const stored = (): Promise<string> =>
  browser.inBackground(async () => JSON.stringify(await chrome.storage.local.get()));

/** Presses until the pattern is marked as taught. At first the card may not have been visible for long enough. */
async function pressUntilTaught(page: Page, card: Frame): Promise<void> {
  await expect
    .poll(async () => {
      if (!(await stored()).includes('compound')) await press(page, card);
      return stored();
    })
    .toContain('compound');
}

/**
 * Presses at the position of the card's first "Mark as taught", whatever is drawn there. For a move over a covered
 * frame, Chromium answers only after a second or at the next press, so the move is not awaited there.
 */
async function press(page: Page, card: Frame): Promise<void> {
  const { x, y, width, height } = (await card
    .getByRole('checkbox', { name: 'Mark as taught' })
    .first()
    .boundingBox())!;
  const moves: Promise<void>[] = [];
  for (const left of [-4, 0]) {
    const moved = page.mouse.move(x + width / 2 + left, y + height / 2);
    if (browserName === 'firefox') await moved;
    else moves.push(moved);
  }
  await page.mouse.down();
  await page.mouse.up();
  await Promise.all(moves);
}

/** Waits until the card's animations have ended, so that a picture of the card can be compared with later pictures. */
async function drawnWhole(card: Frame): Promise<void> {
  await expect
    .poll(async () => card.locator('.sheet').evaluate((sheet) => sheet.getAnimations().length))
    .toBe(0);
}

/** Presses repeatedly for longer than `REST`. The presses must have no effect. */
async function pressInVain(page: Page, card: Frame, before: string): Promise<void> {
  for (let n = 0; n < 5; n++) {
    await press(page, card);
    await page.evaluate(() => new Promise((next) => setTimeout(next, 200)));
  }
  expect(await stored()).toBe(before);
}

test('a visible card does the action of its buttons', async () => {
  const { page, card } = await open();
  await pressUntilTaught(page, card);
  await card.getByRole('status').getByText('Marked as taught').waitFor();
});

/** Covers above the card, each opened by a script of the page. */
const covers: Readonly<Record<string, () => void | Promise<void>>> = {
  'a popover': () => {
    const cover = document
      .querySelector('template')!
      .content.firstElementChild!.cloneNode(true) as HTMLElement;
    cover.popover = 'manual';
    document.body.append(cover);
    cover.showPopover();
  },
  'a popover in a closed root': () => {
    const cover = document
      .querySelector('template')!
      .content.firstElementChild!.cloneNode(true) as HTMLElement;
    const host = document.createElement('section');
    const root = host.attachShadow({ mode: 'closed' });
    cover.popover = 'manual';
    cover.style.cssText =
      'position: fixed; inset: 0; width: 100%; height: 100%; margin: 0; background: gold; pointer-events: none';
    root.append(cover);
    document.body.append(host);
    cover.showPopover();
  },
  'a frame in a popover': () => {
    const cover = document.createElement('iframe');
    cover.className = 'cover';
    cover.srcdoc = '<body style="background: gold">Win a prize';
    cover.popover = 'manual';
    document.body.append(cover);
    cover.showPopover();
  },
};

test.each(Object.entries(covers))('a card under %s reports it and does nothing', async (_what, cover) => {
  const { page, card } = await open();
  const before = await stored();
  await page.evaluate(cover);
  await page.mouse.move(300, 300);
  const { x, y } = (await card.locator('.sheet').boundingBox())!;
  await page.mouse.move(x + 30, y + 30);
  await card.getByRole('status').getByText('lies over this card').waitFor();
  await pressInVain(page, card, before);
});

/** Attempts of a page to hide or move the card that do not change how the card is drawn. */
const vain: Readonly<Record<string, () => void>> = {
  'a fixed cover': () => {
    const cover = document
      .querySelector('template')!
      .content.firstElementChild!.cloneNode(true) as HTMLElement;
    document.body.append(cover);
  },
  transforms: () => {
    const host = document.querySelector<HTMLElement>('[popover]')!;
    host.style.setProperty('transform', 'translate(90px, 90px) scale(0.5)', 'important');
  },
  opacity: () => {
    const host = document.querySelector<HTMLElement>('[popover]')!;
    host.style.setProperty('opacity', '0', 'important');
    host.style.setProperty('visibility', 'hidden', 'important');
    document.documentElement.style.opacity = '0.01';
  },
  'opacity, filters and blending of the body': () => {
    document.documentElement.style.opacity = '0.02';
    document.body.style.cssText += 'filter: blur(20px); mix-blend-mode: difference; opacity: 0.02';
  },
  'an animation of the page': () => {
    for (const element of [document.documentElement, document.body])
      element.animate([{ opacity: 0.02 }, { opacity: 0.02 }], { duration: 1e6, fill: 'both' });
  },
  'sheets of the page': () => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(
      '[popover] { opacity: 0.02 !important; filter: blur(9px) !important; scale: 0.5 !important }',
    );
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
  },
  'clips and filters': () => {
    const host = document.querySelector<HTMLElement>('[popover]')!;
    for (const [name, value] of [
      ['clip-path', 'inset(50%)'],
      ['filter', 'blur(9px)'],
      ['mask', 'linear-gradient(transparent, transparent)'],
    ])
      host.style.setProperty(name!, value!, 'important');
    document.documentElement.style.clipPath = 'inset(0 0 90% 0)';
  },
};

test.each(Object.entries(vain))('a card is not affected by %s', async (_what, attack) => {
  const { page, card } = await open();
  const clip = (await card.locator('.card-head').boundingBox())!;
  await drawnWhole(card);
  const before = await page.screenshot({ clip });
  await page.evaluate(attack);
  await expect.poll(async () => (await page.screenshot({ clip })).equals(before)).toBe(true);
  await pressUntilTaught(page, card);
});

test.each<[string, Keyframe]>([
  ['opacity', { opacity: 0.02 }],
  ['filter', { filter: 'blur(9px)' }],
  ['scale', { scale: 0.5 }],
])('an animation of the card’s host by %s either changes nothing or blocks actions', async (_what, to) => {
  const { page, card } = await open();
  const before = await stored();
  const clip = (await card.locator('.card-head').boundingBox())!;
  await drawnWhole(card);
  const drawn = await page.screenshot({ clip });
  await page.evaluate((to) => {
    document.querySelector('[popover]')!.animate([to, to], { duration: 1e6 });
  }, to);
  await page.mouse.move(300, 300);
  for (let n = 0; n < 5; n++) {
    await press(page, card).catch(() => undefined);
    await page.evaluate(() => new Promise((next) => setTimeout(next, 170)));
  }
  // The press changes the lower part of the card. The head must be unchanged.
  if ((await stored()) !== before) expect((await page.screenshot({ clip })).equals(drawn)).toBe(true);
});

/** In Firefox a filter on the root also covers the top layer. Chromium draws the top layer separately from the root. */
onlyIn('firefox', 'a filter of the root covers the top layer').each([
  ['fades', 'opacity(0.02)'],
  ['draws anything', 'url("#decoy")'],
  ['turns half of the colours', 'invert(0.5)'],
])(
  'a filter of the page that %s lies over the card, which says so and does nothing',
  async (_what, filter) => {
    const { page, card } = await open();
    const before = await stored();
    await page.evaluate((filter) => {
      document.documentElement.style.filter = filter;
    }, filter);
    const { x, y } = (await card.locator('.sheet').boundingBox())!;
    await page.mouse.move(x + 30, y + 30);
    await card.getByRole('status').getByText('lies over this card').waitFor();
    await pressInVain(page, card, before);
  },
);

test('a dark look made by a filter of the page leaves the card usable', async () => {
  const { page, card } = await open();
  await page.evaluate(() => {
    document.documentElement.style.filter = 'invert(1) hue-rotate(180deg)';
  });
  await pressUntilTaught(page, card);
});

/**
 * Attempts of a page in Firefox to hide the frame, which it reaches by its events (`got`), or the root around the
 * frame.
 */
const reached: Readonly<Record<string, () => void>> = {
  'an inline style': () => got.style.setProperty('opacity', '0.01', 'important'),
  'a filter on its host': () => {
    const root = got.getRootNode() as ShadowRoot;
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(':host { filter: opacity(0.01) !important; }');
    root.adoptedStyleSheets = [...root.adoptedStyleSheets, sheet];
  },
  'a sheet of the root': () => {
    const root = got.getRootNode() as ShadowRoot;
    const sheet = new CSSStyleSheet();
    sheet.replaceSync('iframe { clip-path: inset(50%) !important; }');
    root.adoptedStyleSheets = [...root.adoptedStyleSheets, sheet];
  },
  'an animation': () => {
    got.animate([{ opacity: 0.01 }, { opacity: 0.01 }], { duration: 1e6 });
  },
  'an animation that has not begun': () => {
    got.animate([{ opacity: 0.01 }, { opacity: 0.01 }], { duration: 1e6, delay: 1e5 });
  },
  'an element beside it in the root': () => {
    const root = got.getRootNode() as ShadowRoot;
    const cover = document.createElement('div');
    cover.style.cssText = 'position: fixed; inset: 0; background: gold; pointer-events: none';
    root.append(cover);
  },
};

/** Changes that appear and disappear. */
const flickering: Readonly<Record<string, () => void>> = {
  'an animation that comes and goes': () => {
    keepChanging(100, () => {
      const hiding = got.animate([{ opacity: 0.01 }, { opacity: 0.01 }], { duration: 1e6 });
      setTimeout(() => hiding.cancel(), 90);
    });
  },
  'a sheet that comes and goes': () => {
    const root = got.getRootNode() as ShadowRoot;
    const sheet = new CSSStyleSheet();
    root.adoptedStyleSheets = [...root.adoptedStyleSheets, sheet];
    keepChanging(100, () => {
      sheet.replaceSync('iframe { opacity: 0.01 !important; }');
      setTimeout(() => sheet.replaceSync(''), 90);
    });
  },
  'pointer events that come and go': () => {
    keepChanging(60, () => {
      const next = got.style.pointerEvents === 'none' ? 'auto' : 'none';
      got.style.setProperty('pointer-events', next, 'important');
    });
  },
  'a place that changes all the time': () => {
    let n = 0;
    keepChanging(120, () => got.style.setProperty('margin-left', `${n++ % 2 ? 0 : 3}px`, 'important'));
  },
};

/** Gives a page `keepChanging`. It uses both timers and animation frames, since a busy browser delays one of them. */
function giveChanging(): void {
  let last = 0;
  let longest = 0;
  globalThis.longestRest = () => Math.max(longest, performance.now() - last);
  globalThis.keepChanging = (ms, change) => {
    last = performance.now();
    const turn = (): void => {
      const rest = performance.now() - last;
      if (rest < ms) return;
      longest = Math.max(longest, rest);
      last += rest;
      change();
    };
    const draw = (): void => {
      turn();
      requestAnimationFrame(draw);
    };
    setInterval(turn, 10);
    draw();
  };
}

describe('a page that reaches the card’s frame by its events', () => {
  async function openReached(): Promise<{ page: Page; card: Frame; before: string }> {
    const page = await browser.open(browser.serve('cover.html', story));
    await page.evaluate(() => {
      addEventListener(
        'pointerover',
        (event) => {
          const { originalTarget } = event as unknown as { originalTarget: HTMLIFrameElement };
          if (originalTarget.tagName === 'IFRAME') globalThis.got = originalTarget;
        },
        true,
      );
    });
    const card = await openCardOn(browser, page);
    const { x, y } = (await card.locator('.sheet').boundingBox())!;
    await page.mouse.move(x + 30, y + 30);
    await page.waitForFunction(() => 'got' in window);
    return { page, card, before: await stored() };
  }
  async function pressOften(page: Page, card: Frame): Promise<void> {
    for (let n = 0; n < 6; n++) {
      await press(page, card).catch(() => undefined);
      await page.evaluate(() => new Promise((next) => setTimeout(next, 170)));
    }
  }
  const inFirefox = onlyIn('firefox', 'events tell of closed roots');

  inFirefox('does not get its address', async () => {
    const { page } = await openReached();
    const says = await page.evaluate(() => {
      let address = '';
      try {
        address = String(got.contentWindow!.location.href);
      } catch {}
      return [got.src, got.outerHTML, address].filter((text) => /extension:/.test(text));
    });
    expect(says).toEqual([]);
  });

  inFirefox.each(Object.entries(reached))(
    'and hides it by %s: it says so, and does nothing',
    async (_what, hide) => {
      const { page, card, before } = await openReached();
      await page.evaluate(hide);
      await page.mouse.move(300, 300);
      const { x, y } = (await card.locator('.sheet').boundingBox())!;
      await page.mouse.move(x + 40, y + 40);
      await card.getByRole('status').getByText('lies over this card').waitFor();
      await pressOften(page, card);
      expect(await stored()).toBe(before);
    },
  );

  inFirefox.each(Object.entries(flickering))(
    'and changes it by %s: nothing is done',
    async (_what, flicker) => {
      for (let n = 0; n < 6; n++) {
        const { page, card, before } = await openReached();
        await page.evaluate(giveChanging);
        await page.evaluate(flicker);
        await pressOften(page, card);
        // If the browser held up the changes for as long as `REST`, the card was at rest and a press may count.
        const rest = await page.evaluate(() => longestRest());
        if (rest < REST) return expect(await stored()).toBe(before);
        await page.close();
        await browser.inBackground(() => chrome.storage.local.clear());
      }
      expect.fail('The page had no turn for half a second, six times.');
    },
  );
});

test('a modal dialog of the page blocks the card', async () => {
  const { page, card } = await open();
  const before = await stored();
  await page.evaluate(() => {
    const cover = document.createElement('dialog');
    cover.className = 'cover';
    cover.textContent = 'Win a prize';
    document.body.append(cover);
    cover.showModal();
  });
  for (let n = 0; n < 5; n++) {
    // The press beside the dialog closes the card.
    await press(page, card).catch(() => undefined);
    await page.evaluate(() => new Promise((next) => setTimeout(next, 200)));
  }
  expect(await stored()).toBe(before);
});

test('a card covered by an element in full screen does nothing', async () => {
  const { page, card } = await open();
  const before = await stored();
  await page.evaluate(() => {
    const cover = document
      .querySelector('template')!
      .content.firstElementChild!.cloneNode(true) as HTMLElement;
    document.body.append(cover);
    document.querySelector('button')!.addEventListener('keydown', () => void cover.requestFullscreen());
    document.querySelector('button')!.focus();
  });
  await page.keyboard.press('a');
  await page.waitForFunction(() => document.fullscreenElement !== null);
  if ((await page.evaluate(() => document.querySelector('[popover]'))) !== null)
    for (let n = 0; n < 5 && card.isDetached() === false; n++) {
      await press(page, card).catch(() => undefined);
      await page.evaluate(() => new Promise((next) => setTimeout(next, 200)));
    }
  expect(await stored()).toBe(before);
});

test('a card that the page keeps moving does nothing', async () => {
  const { page, card } = await open();
  const before = await stored();
  await page.evaluate(() => {
    const word = document.querySelector<HTMLElement>('b')!;
    let n = 0;
    setInterval(() => {
      word.style.cssText = `position: relative; left: ${n++ % 2 ? 0 : 40}px`;
      document.body.append(document.createComment(''));
    }, 120);
  });
  for (let n = 0; n < 8; n++) {
    await press(page, card).catch(() => undefined);
    await page.evaluate(() => new Promise((next) => setTimeout(next, 90)));
  }
  expect(await stored()).toBe(before);
});

test('a card that moves under the pointer as it is pressed does nothing', async () => {
  const { page, card } = await open();
  const before = await stored();
  const { x, y, width, height } = (await card
    .getByRole('checkbox', { name: 'Mark as taught' })
    .first()
    .boundingBox())!;
  await page.evaluate(() => {
    addEventListener('pointermove', () => {
      document.querySelector<HTMLElement>('b')!.style.cssText = 'position: relative; left: 500px';
      document.body.append(document.createComment(''));
    });
  });
  await page.mouse.move(x + width / 2 + 500, y + height / 2);
  await page.mouse.down();
  await page.mouse.up();
  await page.mouse.down();
  await page.mouse.up();
  expect(await stored()).toBe(before);
});
