import type { Browser, BrowserContextOptions } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { runAxe } from './axe-faults.ts';
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

describe('a legible card', () => {
  // In dark mode and with forced colours only the colours differ. The next tests check these colours.
  test.each<[string, BrowserContextOptions]>([
    ['wide', {}],
    ['narrow', { viewport: { width: 320, height: 256 } }],
  ])('has no axe faults, %s', async (_how, setting) => {
    const at = await open(STORY.replace('<title>', '<html lang="en"><title>'), {
      reducedMotion: 'reduce',
      ...setting,
    });
    for (const word of ['lighthouse', 'wind', 'said']) {
      await at.word(word).scrollIntoViewIfNeeded();
      await openOn(at, word);
      await at.page.clock.resume();
      const { faults, passes } = await runAxe(at.page, { part: '[popover]', frames: true });
      expect(faults).toEqual([]);
      expect(passes['button-name'], 'the card is looked at').toBeGreaterThan(1);
      await at.page.keyboard.press('Escape');
    }
  });

  // axe does not know the background of an element in the top layer, so contrast is measured here (WCAG 2.1, 1.4.3).
  test.each(['light', 'dark'] as const)('has enough contrast, %s', async (colorScheme) => {
    const at = await open(STORY, { colorScheme, swaps: { lighthouse: [{ text: 'beacon', reads: false }] } });
    for (const word of ['lighthouse', 'ferry', 'wind']) {
      await openOn(at, word);
      await at.page.clock.runFor(200);
      await at.page.evaluate(() => {
        cardTest.fault = 'The browser’s storage is full; delete a group first.';
      });
      await at.card.getByRole('radio', { name: 'ignored' }).click();
      await at.card.getByText('storage is full').waitFor();
      const measured = await at.card.evaluate(contrasts);
      expect(measured.length).toBeGreaterThan(12);
      expect(measured.filter(({ ratio }) => ratio < 4.5)).toEqual([]);
      await at.page.keyboard.press('Escape');
    }
  });

  test('is dark if the reader prefers dark, whatever the page looks like', async () => {
    const background = async (colorScheme: 'light' | 'dark'): Promise<string> => {
      const at = await open(STORY.replace('style="', 'style="background: white; color: black; '), {
        colorScheme,
      });
      await openOn(at, 'hoping');
      return at.card.evaluate((card) => getComputedStyle(card).backgroundColor);
    };
    expect(await background('light')).toBe('rgb(255, 253, 248)');
    expect(await background('dark')).toBe('rgb(32, 40, 46)');
  });

  test('has a frame around a missing spelling in forced colours', async () => {
    const at = await open(STORY, { forcedColors: 'active' });
    await openOn(at, 'hoping');
    const frames = await at.card
      .locator('.unit')
      .evaluateAll((units) => units.map((unit) => getComputedStyle(unit).borderTopStyle));
    expect(frames).toEqual(['none', 'solid', 'none', 'none']);
  });

  test('does not move if the reader wants less motion', async () => {
    const animation = async (reducedMotion: 'reduce' | 'no-preference'): Promise<string> => {
      const at = await open(STORY, { reducedMotion });
      await openOn(at, 'hoping');
      return at.card.evaluate((card) => getComputedStyle(card).animationName);
    };
    expect(await animation('reduce')).toBe('none');
    expect(await animation('no-preference')).toBe('appear');
  });

  test('has the letter size chosen by the reader, not by the page', async () => {
    const size = async (html: string): Promise<string> => {
      const at = await open(html);
      await openOn(at, 'hoping');
      return at.card.locator('.card-word').evaluate((word) => getComputedStyle(word).fontSize);
    };
    expect(await size(STORY)).toBe('28px');
    expect(await size(`${STORY}<style>html { font-size: 40px }</style>`)).toBe('28px');
  });
});

describe('a card does not cover its word', () => {
  // 1280 by 1024 at 400 % is 320 by 256 CSS pixels (WCAG 2.1, 1.4.10).
  test.each([
    [320, 256, 'ltr'],
    [320, 256, 'rtl'],
    [320, 640, 'rtl'],
    [800, 300, 'ltr'],
    [1280, 800, 'rtl'],
  ])('in a view of %i by %i with text direction %s', async (width, height, dir) => {
    const rows = Array.from({ length: 5 }, (_, i) => {
      const style = `position: absolute; left: ${i * 22}%; top: ${i * 22 + 1}%`;
      return `<p style="${style}; margin: 0"><w>${['lighthouse', 'wind', 'said', 'hoping', 'cat'][i]}</w></p>`;
    });
    const at = await open(`<!doctype html><body dir="${dir}" style="margin:0">${rows.join('')}`, {
      viewport: { width, height },
    });
    for (const word of ['lighthouse', 'wind', 'said', 'hoping', 'cat']) {
      await openOn(at, word);
      const card = (await at.card.boundingBox())!;
      const on = (await at.word(word).boundingBox())!;
      const where = `${word} ${dir} ${JSON.stringify({ card, on })}`;
      expect(card.x >= 0 && card.y >= 0, where).toBe(true);
      expect(card.x + card.width <= width && card.y + card.height <= height, where).toBe(true);
      const apart =
        card.x >= on.x + on.width ||
        card.y >= on.y + on.height ||
        on.x >= card.x + card.width ||
        on.y >= card.y + card.height;
      expect(apart, where).toBe(true);
      const skip = at.card.getByRole('radio', { name: 'ignored' });
      await skip.scrollIntoViewIfNeeded();
      await skip.click({ trial: true, timeout: 2000 });
      await at.page.keyboard.press('Escape');
    }
  });

  test('and is aligned with the start of the word in text from right to left', async () => {
    const at = await open(STORY.replace('<body', '<body dir="rtl"'));
    await openOn(at, 'lighthouse');
    const card = (await at.card.boundingBox())!;
    const on = (await at.word('lighthouse').boundingBox())!;
    expect(card.x + card.width).toBeCloseTo(on.x + on.width, 0);
  });
});

/** Returns the contrast of each piece of text in a card with the background painted behind it. */
function contrasts(card: Element): { text: string; ratio: number }[] {
  const channels = (colour: string): number[] => colour.match(/[\d.]+/g)!.map(Number);
  const luminance = (colour: string): number => {
    const [r, g, b] = channels(colour).map((value) => {
      const part = value / 255;
      return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
  };
  const behind = (element: Element): string => {
    const { backgroundColor } = getComputedStyle(element);
    const clear = channels(backgroundColor)[3] === 0;
    return clear ? behind(element.parentElement!) : backgroundColor;
  };
  return [...card.querySelectorAll('*')]
    .filter(({ childNodes }) =>
      [...childNodes].some((node) => node.nodeType === Node.TEXT_NODE && /\S/.test(node.nodeValue!)),
    )
    .map((element) => {
      const [dark, light] = [getComputedStyle(element).color, behind(element)]
        .map(luminance)
        .sort((a, b) => a - b);
      return { text: element.textContent!, ratio: (light! + 0.05) / (dark! + 0.05) };
    });
}
