import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { LEAVE_MS, REST_MS } from '../../src/overlay/card/watch-hover.ts';
import { startPlainBrowser } from './browser.ts';
import type { CardPage } from './card-page.ts';
import { openOn, openStory, type Setting, STORY } from './card-story.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await startPlainBrowser();
});
afterAll(() => browser?.close());

function open(html?: string, setting?: Setting): Promise<CardPage> {
  return openStory(browser, html, setting);
}

describe('a card that has just opened', () => {
  /**
   * Clicks "Mark as taught" when the card has been in place for `ms` milliseconds, and returns the actions that were
   * carried out.
   */
  async function clickAfter(ms: number): Promise<string[]> {
    const at = await open(STORY, { rest: 'own' });
    await openOn(at, 'hoping');
    const mark = at.card.getByRole('checkbox', { name: /^Mark as taught/ }).first();
    const { x, y, width, height } = (await mark.boundingBox())!;
    await at.page.mouse.move(x + width / 2, y + height / 2);
    await heard(at, true);
    await at.page.clock.runFor(ms);
    await at.page.mouse.down();
    await at.page.mouse.up();
    await at.card.getByRole('status').filter({ hasText: /./ }).waitFor();
    return at.page.evaluate(() => cardTest.acted.map((action) => action.do));
  }

  test('does nothing in its first half second', async () => {
    expect(await clickAfter(0)).toEqual([]);
    expect(await clickAfter(499)).toEqual([]);
  });

  test('carries out an action clicked after half a second', async () => {
    expect(await clickAfter(500)).toEqual(['teach']);
  });
});

describe('a pointer at rest', () => {
  test.each(['hoping', 'wind', 'ferry'])('opens the card of %s after a while', async (word) => {
    const at = await open();
    await at.pointTo(word);
    await at.page.clock.runFor(REST_MS - 10);
    expect(await at.isOpen()).toBe(false);
    await at.page.clock.runFor(20);
    await at.card.waitFor();
    expect(await at.card.getAttribute('aria-labelledby')).toBe('word');
    expect(await at.page.evaluate(() => document.activeElement === document.body)).toBe(true);
  });

  test('opens no card on a decodable word or outside words', async () => {
    const at = await open();
    await at.pointTo('cat');
    await at.page.clock.runFor(REST_MS + 10);
    await at.page.mouse.move(700, 700);
    await at.page.clock.runFor(REST_MS + 10);
    expect(await at.isOpen()).toBe(false);
  });

  test('may move onto the card, which closes when the pointer leaves word and card', async () => {
    const at = await open();
    await at.pointTo('hoping');
    await at.page.clock.runFor(REST_MS + 10);
    const { x, y } = (await at.card.boundingBox())!;
    await at.page.mouse.move(x + 40, y - 3);
    await at.page.clock.runFor(LEAVE_MS - 50);
    await at.page.mouse.move(x + 40, y + 40);
    await heard(at, true);
    await at.page.clock.runFor(LEAVE_MS * 4);
    expect(await at.isOpen()).toBe(true);
    await at.pointTo('hoping');
    await heard(at, false);
    await at.page.clock.runFor(LEAVE_MS * 4);
    expect(await at.isOpen()).toBe(true);
    await at.page.mouse.move(700, 850);
    await at.page.clock.runFor(LEAVE_MS - 10);
    expect(await at.isOpen()).toBe(true);
    await at.page.clock.runFor(20);
    expect(await at.isOpen()).toBe(false);
  });

  test('does not reopen a card that was closed with Escape', async () => {
    const at = await open();
    await at.pointTo('hoping');
    await at.page.clock.runFor(REST_MS + 10);
    await at.page.keyboard.press('Escape');
    expect(await at.isOpen()).toBe(false);
    const { x, y } = (await at.word('hoping').boundingBox())!;
    await at.page.mouse.move(x + 3, y + 8);
    await at.page.clock.runFor(REST_MS * 4);
    expect(await at.isOpen()).toBe(false);
  });

  test('opens no card if the page scrolls meanwhile', async () => {
    const at = await open(`${STORY}<div style="height: 3000px">`);
    await at.pointTo('hoping');
    await at.page.clock.runFor(REST_MS - 100);
    await at.page.evaluate(
      () =>
        new Promise((resolve) => {
          addEventListener('scroll', resolve, { once: true });
          scrollBy(0, 4);
        }),
    );
    await at.page.clock.runFor(REST_MS * 2);
    expect(await at.isOpen()).toBe(false);
  });

  test('keeps a card open after a click in the card', async () => {
    const at = await open();
    await at.pointTo('hoping');
    await at.page.clock.runFor(REST_MS + 10);
    await at.card.getByText('made of').click();
    await at.page.mouse.move(700, 850);
    await at.page.clock.runFor(LEAVE_MS * 4);
    expect(await at.isOpen()).toBe(true);
    await at.page.mouse.down();
    expect(await at.isOpen()).toBe(false);
  });
});

describe('Alt+click', () => {
  test('opens the card of any word, and the page does not receive the click', async () => {
    const at = await open(STORY.replace('<w>cat</w>', '<a href="#gone"><w>cat</w></a>'));
    await at.page.evaluate(() => {
      const heard: string[] = [];
      Object.assign(window, { heard });
      for (const kind of ['pointerdown', 'mousedown', 'pointerup', 'mouseup', 'click']) {
        document.addEventListener(kind, () => heard.push(kind), true);
      }
    });
    await openOn(at, 'cat');
    expect(await at.card.textContent()).toContain('The group can decode it.');
    expect(await at.page.evaluate(() => (window as unknown as { heard: string[] }).heard)).toEqual([]);
    expect(at.page.url()).not.toContain('gone');
    await at.page.mouse.click(700, 700);
    await at.page.keyboard.down('Alt');
    await at.page.mouse.click(700, 700);
    expect(await at.page.evaluate(() => (window as unknown as { heard: string[] }).heard)).toHaveLength(10);
  });

  test('opens the card at once, and a click elsewhere closes it', async () => {
    const at = await open();
    await openOn(at, 'lighthouse');
    await at.page.mouse.click(700, 850);
    expect(await at.isOpen()).toBe(false);
  });

  test('opens a card that says why there is no explanation', async () => {
    const at = await open('<!doctype html><p>A <w>qqq</w> here');
    await at.word('qqq').click({ modifiers: ['Alt'] });
    await at.card.getByText('Nothing is known of this word.').waitFor();
  });
});

describe('the keyboard', () => {
  /** Waits until the frame of a card, still without content, is loaded. */
  async function frameLoads({ page }: CardPage): Promise<void> {
    const body = page.frameLocator('[popover] iframe').locator('body');
    await expect.poll(() => body.evaluate(() => document.readyState)).toBe('complete');
  }

  test('moves into the next card, and back to its former place when the card closes', async () => {
    const at = await open(`${STORY}<input aria-label="Search">`);
    await at.page.getByLabel('Search').focus();
    await at.page.evaluate(() => cardTest.cards.step(1));
    await at.card.getByRole('heading', { name: 'lighthouse' }).waitFor();
    expect(await isInCard(at.page)).toBe(true);
    await at.page.evaluate(() => cardTest.cards.step(1));
    await at.card.getByRole('heading', { name: 'hoping' }).waitFor();
    await at.page.keyboard.press('Tab');
    expect(await at.card.getByRole('button', { name: 'hear it' }).evaluate(isFocused)).toBe(true);
    await at.page.evaluate(() => cardTest.cards.step(-1));
    await at.card.getByRole('heading', { name: 'lighthouse' }).waitFor();
    await at.page.keyboard.press('Escape');
    await expect.poll(() => at.isOpen()).toBe(false);
    expect(await at.page.getByLabel('Search').evaluate(isFocused)).toBe(true);
  });

  test('closes with Escape a card whose content has not come yet', async () => {
    const at = await open(STORY, { isLate: true });
    await at.page.evaluate(() => cardTest.cards.step(1));
    await frameLoads(at);
    await at.page.keyboard.press('Escape');
    expect(await at.isOpen()).toBe(false);
  });

  test('moves into a card whose content comes late', async () => {
    const at = await open(STORY, { isLate: true });
    await at.page.evaluate(() => cardTest.cards.step(1));
    await frameLoads(at);
    expect(await isInCard(at.page)).toBe(false);
    await at.page.evaluate(() => cardTest.serve());
    await expect.poll(() => isInCard(at.page)).toBe(true);
  });

  test('does not pass Escape or keys pressed in the card to the page', async () => {
    const at = await open();
    await at.page.evaluate(() => {
      document.addEventListener('keydown', ({ key }) => {
        document.title += ` ${key}`;
      });
    });
    await at.page.evaluate(() => cardTest.cards.step(1));
    await at.card.waitFor();
    await at.page.keyboard.press('j');
    await at.page.keyboard.press('Escape');
    await expect.poll(() => at.isOpen()).toBe(false);
    expect(await at.page.title()).toBe('Tarn Quay');
    await at.page.keyboard.press('j');
    expect(await at.page.title()).toBe('Tarn Quay j');
  });
});

describe('a card shows', () => {
  test('how a word is built and which patterns are missing', async () => {
    const at = await open();
    await openOn(at, 'hoping');
    expect(await at.card.locator('.card-word .marked').textContent()).toBe('hōp·ĭng');
    expect(await at.card.locator('.unit-letters').allTextContents()).toEqual(['h', 'o', 'p', 'ing']);
    expect(await at.card.locator('.unit-sound').allTextContents()).toEqual(['h', 'ō', 'p', 'ĭng']);
    expect(await at.card.locator('.unit-key').allTextContents()).toContain('rope');
    const text = await at.card.textContent();
    expect(text).toContain('hope + ing, drop the e');
    expect(text).toContain('Step 31 of your sequence teaches it.');
    expect(text).toContain('Not in your sequence.');
    expect(text).toContain('Not yet decodable.');
    expect(text).not.toContain('Replacement words');
  });

  test('both readings of two words with the same spelling', async () => {
    const at = await open();
    await openOn(at, 'wind');
    expect(await at.card.locator('.reading .marked').allTextContents()).toEqual(['wĭnd', 'wīnd']);
  });

  test('an irregular spelling, without an offer to mark it as a taught pattern', async () => {
    const at = await open();
    await openOn(at, 'said');
    expect(await at.card.textContent()).toContain('the ai says ĕ');
    expect(await at.card.getByRole('checkbox').count()).toBe(0);
    expect(await at.card.getByRole('radio', { name: 'by-sight word' }).count()).toBe(1);
  });

  test('that a guess is a guess', async () => {
    const at = await open('<!doctype html><p>The <w>glomtide</w> sea');
    await openOn(at, 'glomtide');
    expect(await at.card.textContent()).toMatch(/guess: not in the dictionary/i);
  });

  test('the replacement words', async () => {
    const swaps = {
      lighthouse: [
        { text: 'lamp', reads: true },
        { text: 'beacon', reads: false },
      ],
    };
    const at = await open(STORY, { swaps });
    await openOn(at, 'lighthouse');
    await at.page.clock.runFor(200);
    expect(await at.card.locator('.swap-words li').allTextContents()).toEqual([
      'lamp',
      'beacon (not yet decodable)',
    ]);
  });
});

describe('the teacher', () => {
  test.each([
    ['by-sight word', 'radio', { do: 'by-sight', word: 'hoping' }, 'By-sight word.'],
    ['name', 'radio', { do: 'name', word: 'hoping' }, 'Name: not counted.'],
    ['ignored', 'radio', { do: 'skip', word: 'hoping' }, 'Ignored: not counted.'],
    [
      'Mark as taught o_e as in rope',
      'checkbox',
      { do: 'teach', pattern: 'o_e' },
      'The group can decode it.',
    ],
  ] as const)('can choose %s and undo it', async (name, role, action, then) => {
    const at = await open('<!doctype html><p>Bram was <w>hoping</w>');
    await at.page.evaluate(() => cardTest.cards.step(1));
    const choice = at.card.getByRole(role, { name, exact: true });
    const place = await choice.boundingBox();
    await choice.press(' ');
    await at.card
      .getByRole('status')
      .getByText(/counts as|Marked as taught/)
      .waitFor();
    expect(await at.page.evaluate(() => cardTest.acted)).toEqual([action]);
    expect(await at.card.textContent()).toContain(then);
    expect(await choice.isChecked()).toBe(true);
    expect(await choice.boundingBox()).toEqual(place);
    expect(await isInCard(at.page)).toBe(true);
    await at.card.getByRole('button', { name: 'Undo' }).press('Enter');
    await at.card.getByRole('status').getByText('Undone.').waitFor();
    expect(await at.card.textContent()).toContain('Not yet decodable.');
    expect(await choice.isChecked()).toBe(false);
    expect(await isInCard(at.page)).toBe(true);
  });

  test('sees why an action failed', async () => {
    const at = await open();
    await openOn(at, 'hoping');
    await at.page.evaluate(() => {
      cardTest.fault = 'The browser’s storage is full; delete a group first.';
    });
    await at.card.getByRole('radio', { name: 'name', exact: true }).click();
    await at.card.getByRole('status').getByText('storage is full').waitFor();
    expect(await at.card.textContent()).toContain('Not yet decodable.');
  });

  /** Replaces the machine's voices by one voice. The spoken text becomes the title of the page. */
  async function withVoice(at: CardPage, localService: boolean): Promise<void> {
    const frame = at.page.frames().at(-1)!;
    await frame.evaluate((localService) => {
      const voice = { lang: 'en-GB', localService, default: true };
      Object.defineProperty(globalThis, 'SpeechSynthesisUtterance', {
        value: class {
          text: string;
          constructor(text: string) {
            this.text = text;
          }
        },
      });
      speechSynthesis.getVoices = () => [voice as SpeechSynthesisVoice];
      speechSynthesis.speak = ({ text }) => {
        document.title = `${text} spoken`;
      };
    }, localService);
  }
  const title = (at: CardPage): Promise<string> => at.card.evaluate(() => document.title);

  test('can listen to the word', async () => {
    const at = await open();
    await openOn(at, 'hoping');
    await withVoice(at, true);
    await at.card.getByRole('button', { name: 'hear it' }).click();
    await expect.poll(() => title(at)).toBe('hoping spoken');
  });

  test('hears only voices of this machine', async () => {
    const at = await open();
    await openOn(at, 'hoping');
    await withVoice(at, false);
    await at.card.getByRole('button', { name: 'hear it' }).click();
    await at.card.getByRole('status').getByText('No English voice is installed').waitFor();
    expect(await title(at)).toBe('Card');
  });
});

describe('the page', () => {
  test('is the same as before once the card is closed', async () => {
    const at = await open();
    const before = await at.html();
    await openOn(at, 'hoping');
    expect(await at.html()).not.toBe(before);
    await at.card.getByRole('button', { name: 'close' }).click();
    await expect.poll(() => at.html()).toBe(before);
    await openOn(at, 'wind');
    await at.page.evaluate(() => cardTest.stop());
    expect(await at.html()).toBe(before);
    await at.word('wind').click({ modifiers: ['Alt'] });
    await at.pointTo('hoping');
    await at.page.clock.runFor(REST_MS * 2);
    expect(await at.html()).toBe(before);
  });

  test('cannot look into the card', async () => {
    const at = await open(STORY, { mode: 'closed' });
    await at.word('hoping').click({ modifiers: ['Alt'] });
    await at.page.waitForSelector('[popover="manual"]', { state: 'attached' });
    expect(
      await at.page.evaluate(() => {
        const host = document.querySelector('[popover="manual"]')!;
        return [host.shadowRoot, host.textContent, host.outerHTML];
      }),
    ).toEqual([null, '', '<div popover="manual"></div>']);
  });

  test('may remove the card or its word, and either closes the card', async () => {
    const at = await open();
    await openOn(at, 'hoping');
    await at.page.evaluate(() => document.querySelector('[popover]')!.remove());
    await openOn(at, 'wind');
    await at.page.evaluate(() => document.querySelectorAll('w')[2]!.remove());
    await at.page.clock.runFor(50);
    expect(await at.isOpen()).toBe(false);
  });

  test('cannot open a card with synthetic events', async () => {
    const at = await open();
    await at.page.evaluate(() => {
      const { left: clientX, top: clientY } = document.querySelector('w')!.getBoundingClientRect();
      const init = { bubbles: true, altKey: true, clientX: clientX + 4, clientY: clientY + 8, detail: 1 };
      for (const kind of ['pointerdown', 'click', 'pointermove']) {
        document.body.dispatchEvent(new PointerEvent(kind, init));
      }
    });
    await at.page.clock.runFor(REST_MS * 2);
    expect(await at.isOpen()).toBe(false);
  });

  test('cannot change the look of the card with style rules, or cover it', async () => {
    const hostile = `<style>
      html { font-size: 62.5%; line-height: 4; letter-spacing: 1em; text-transform: uppercase; text-align: right }
      div { display: none !important; opacity: 0.1 !important; transform: scale(2) !important; color: red !important;
        filter: blur(4px) !important; font-size: 70px !important; pointer-events: none !important; width: 9px !important }
      * { --sea: hotpink !important; --rem: 90px !important; --leaf: hotpink; cursor: wait !important }
      .over { position: fixed; inset: 300px 0 0; z-index: 2147483647; background: teal; display: block !important }
    </style>`;
    const plain = await open();
    await openOn(plain, 'hoping');
    const at = await open(`${STORY}${hostile}<section class="over"></section>`);
    await openOn(at, 'hoping');
    expect(await look(at)).toEqual(await look(plain));
    await at.card.getByRole('radio', { name: 'name', exact: true }).click({ timeout: 2000 });
  });

  test('may forbid every style and script, except those of the card', async () => {
    const plain = await open();
    await openOn(plain, 'hoping');
    const policy = `<meta http-equiv="Content-Security-Policy" content="style-src 'none'; require-trusted-types-for 'script'">`;
    const at = await open(STORY.replace('<title>', `${policy}<title>`));
    await openOn(at, 'hoping');
    expect(await look(at)).toEqual(await look(plain));
  });

  test('may have an open modal dialog with words in it', async () => {
    const at = await open(`${STORY}<dialog><p>The <w>glomtide</w> sea</dialog>`);
    await at.page.evaluate(() => document.querySelector('dialog')!.showModal());
    const before = await at.html();
    await openOn(at, 'glomtide');
    await at.card.getByRole('radio', { name: 'name', exact: true }).click({ timeout: 2000 });
    await at.page.keyboard.press('Escape');
    await expect.poll(() => at.html()).toBe(before);
    expect(await at.page.evaluate(() => document.querySelector('dialog')!.open)).toBe(true);
  });

  test('may scroll: the card follows its word, and closes when the word is out of view', async () => {
    const at = await open(`${STORY}<div style="height: 3000px">`);
    await openOn(at, 'hoping');
    const before = (await at.card.boundingBox())!;
    // The browser reports a scroll with its next frame, which the test's clock does not control.
    const later = async <T>(look: () => Promise<T>): Promise<T> => {
      await at.page.clock.runFor(50);
      return look();
    };
    await at.page.evaluate(() => scrollBy(0, 15));
    await expect
      .poll(() => later(async () => Math.round((await at.card.boundingBox())!.y)))
      .toBe(Math.round(before.y - 15));
    await at.page.evaluate(() => scrollBy(0, 600));
    await expect.poll(() => later(at.isOpen)).toBe(false);
  });
});

/** Waits until the card has told the page whether the pointer is on the card. */
async function heard(at: CardPage, isOver: boolean): Promise<void> {
  await expect.poll(() => at.card.evaluate((card) => card.matches(':hover'))).toBe(isOver);
  await at.page.evaluate(async () => {
    for (let n = 0; n < 3; n++)
      await new Promise((resolve) => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = resolve;
        port2.postMessage(null);
      });
  });
}

function isFocused(element: Element): boolean {
  return (element.getRootNode() as Document | ShadowRoot).activeElement === element;
}

function isInCard(page: Page): Promise<boolean> {
  return page.evaluate(() => document.activeElement === document.querySelector('[popover]'));
}

/** Returns the measurable properties of how a card looks. */
function look(at: CardPage): Promise<unknown> {
  return at.card.evaluate((card) =>
    [card, ...card.querySelectorAll('*')].map((element) => {
      const style = getComputedStyle(element);
      const { width, height } = element.getBoundingClientRect();
      const { color, backgroundColor, fontSize, letterSpacing, textTransform, textAlign, cursor } = style;
      // Firefox stores lengths less exactly the further down the page they are.
      return [
        element.className,
        width.toFixed(2),
        height.toFixed(2),
        color,
        backgroundColor,
        fontSize,
        letterSpacing,
      ].concat([textTransform, textAlign, cursor]);
    }),
  );
}
