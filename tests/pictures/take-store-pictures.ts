import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import { startOwnBrowser, type TestBrowser } from '../e2e/browser.ts';
import { screens } from './screens.ts';

/**
 * Takes the pictures of the guide and the readme (`public/guide`) and the pictures for the stores
 * (`.output/pictures/store`, 1280 × 800, as the stores require). They show a page with its marks, the panel beside the
 * page, the card of a word, the desk, the lesson and the shelf.
 * The pictures of the guide are part of the package. `pngquant --nofs --ext .png --force 128 public/guide/*.png`
 * reduces them to a third of their size.
 */
const guide = fileURLToPath(new URL('../../public/guide/', import.meta.url));
const store = fileURLToPath(new URL('../../.output/pictures/store/', import.meta.url));
for (const folder of [guide, store]) mkdirSync(folder, { recursive: true });

const browser = await startOwnBrowser();
try {
  const story = await open('story', 800, 800);
  const panel = await browser.openPanel(story);
  await panel.locator('.reach').waitFor();
  await hideBar(panel);
  await panel.setViewportSize({ width: 480, height: 800 });
  await beside('page-and-panel', story, panel);
  keep(`${guide}shade.png`, await story.screenshot({ clip: { x: 0, y: 0, width: 800, height: 500 } }));
  await story.setViewportSize({ width: 480, height: 500 });
  await panel.setViewportSize({ width: 320, height: 500 });
  await panel.locator('.reach').scrollIntoViewIfNeeded();
  await panel.evaluate(() => document.querySelector('.reach')!.scrollIntoView());
  await beside('panel', story, panel);
  await story.setViewportSize({ width: 800, height: 640 });
  await openCard(story, 'lighthouse');
  keep(`${guide}word.png`, await story.screenshot());
  await story.setViewportSize({ width: 1280, height: 800 });
  await openCard(story, 'lanterns');
  keep(`${store}word.png`, await story.screenshot());
  for (const name of ['desk', 'lesson', 'shelf', 'groups']) {
    const page = await open(name, 1280, 800);
    keep(`${store}${name}.png`, await page.screenshot());
    if (name === 'desk') {
      await page.setViewportSize({ width: 1200, height: 750 });
      await page.evaluate(() => document.querySelector('.cm-editor')!.scrollIntoView({ block: 'center' }));
      keep(`${guide}desk.png`, await page.screenshot({ scale: 'css' }));
    }
  }
} finally {
  await browser.close();
}

async function open(name: string, width: number, height: number): Promise<Page> {
  const page = await screens.find((screen) => screen.name === name)!.open(browser as TestBrowser);
  await page.emulateMedia({ colorScheme: 'light', reducedMotion: 'reduce' });
  await page.setViewportSize({ width, height });
  await hideBar(page);
  return page;
}

/** Hides the scrollbar, since a picture cannot be scrolled. */
async function hideBar(page: Page): Promise<void> {
  await page.evaluate(() => document.documentElement.style.setProperty('scrollbar-width', 'none'));
}

/** Puts pictures of two pages side by side, as a window shows them. */
async function beside(name: string, left: Page, right: Page): Promise<void> {
  const images = await Promise.all([left, right].map((page) => page.screenshot()));
  const sizes = [left.viewportSize()!, right.viewportSize()!];
  const page = await browser.context.newPage();
  const width = sizes[0]!.width + sizes[1]!.width;
  await page.setViewportSize({ width, height: sizes[0]!.height });
  const tags = images.map(
    (image, i) => `<img width="${sizes[i]!.width}" src="data:image/png;base64,${image.toString('base64')}">`,
  );
  await page.setContent(`<body style="margin:0;display:flex;background:#888;gap:0">${tags.join('')}`);
  await page.waitForFunction(() => [...document.images].every(({ complete }) => complete));
  keep(name === 'panel' ? `${guide}panel.png` : `${store}${name}.png`, await page.screenshot());
  await page.close();
}

/** Rests the pointer on the first occurrence of a word until the card of the word has appeared. */
async function openCard(page: Page, word: string): Promise<void> {
  await page.bringToFront();
  const box = await page.evaluate((wanted) => {
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walker.nextNode()) {
      const node = walker.currentNode as Text;
      const at = node.data.indexOf(wanted);
      if (at < 0) continue;
      node.parentElement!.scrollIntoView({ block: 'start' });
      const range = document.createRange();
      range.setStart(node, at);
      range.setEnd(node, at + wanted.length);
      const { x, y, width, height } = range.getBoundingClientRect();
      return { x: x + width / 2, y: y + height / 2 };
    }
    return null;
  }, word);
  await page.mouse.move(5, 5);
  await page.mouse.move(box!.x, box!.y, { steps: 4 });
  // The wait has a fixed length, because no script of the page can look into the root that holds the card.
  await page.waitForTimeout(1500);
}

function keep(path: string, picture: Buffer): void {
  writeFileSync(path, picture);
  process.stdout.write(`${path}\n`);
}
