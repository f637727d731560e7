import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import { createJudge, vet } from '../analyze/index.ts';
import { countWords } from '../cli/count-words.ts';
import { createVetter } from '../cli/create-vetter.ts';
import { describeReport } from '../cli/describe-report.ts';
import { loadEngine } from '../cli/load-engine.ts';
import { loadGroup } from '../cli/load-group.ts';
import { readHtml } from '../cli/read-html.ts';
import { InputError, runCommand } from '../cli/run-command.ts';
import { openTerminal } from '../cli/terminal.ts';
import { writeShadedPage } from '../cli/write-shaded-page.ts';
import { getBrowser } from './get-browser.ts';
import { builtExtension, type ExtensionBrowser, launchExtension } from './launch-extension.ts';

const path = (name: string): string => fileURLToPath(new URL(`../../${name}`, import.meta.url));
const shown = (full: string): string => relative(process.cwd(), full) || '.';
const storyFile = path('public/story/index.html');
const story = readFileSync(storyFile, 'utf8');
const pictures = path('.output/start');

const BY_HAND = `To load it into your own browser, use the folder ${shown(builtExtension)}:
  Chrome    chrome://extensions, switch on Developer mode, Load unpacked
  Edge      edge://extensions, switch on Developer mode, Load unpacked
  Firefox   run npm run build:firefox, then about:debugging, This Firefox, Load Temporary Add-on,
            and choose manifest.json in .output/firefox-mv2
Then open a story and press the Wordreach button in the toolbar.`;

await runCommand('Usage: npm start', async () => {
  const herons = loadHerons();
  let executable: string;
  try {
    executable = await getBrowser('chromium');
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return `${report(herons)}\n\n${error.message}\nUntil then: ${shown(await writePage(herons))} is the report as a page, for any browser.\n\n${BY_HAND}`;
  }
  const headless = process.platform === 'linux' && !process.env.DISPLAY && !process.env.WAYLAND_DISPLAY;
  const browser = await launchExtension({ executable, headless, sealed: false });
  const { page, stop } = await openStory(browser);
  if (headless) {
    const files = await takePictures(browser, page);
    await browser.close();
    stop();
    return `${report(herons)}\n\nThere is no display, so the pictures are in ${files.map(shown).join(' and ')}.\n\n${BY_HAND}`;
  }
  process.stdout.write(`${BY_HAND}\n\nClose the browser to end.\n`);
  await new Promise((resolve) => browser.context.once('close', resolve));
  stop();
  return '';
});

/** The group for which the story is vetted, with the engine and the judge. */
type Herons = ReturnType<typeof loadHerons>;

function loadHerons() {
  const engine = loadEngine();
  const group = loadGroup(path('profiles/groups/herons.json'));
  return { engine, group, judge: createJudge(engine, group.compiled) };
}

/** Writes a page with the report and the shaded story. Returns its path. */
async function writePage({ engine, group, judge }: Herons): Promise<string> {
  const vetter = createVetter({ groups: [group], words: false }, engine);
  const record = await vetter.vetFile({ path: shown(storyFile), error: null });
  const file = `${pictures}/report.html`;
  mkdirSync(pictures, { recursive: true });
  writeFileSync(file, writeShadedPage(record, readHtml(story).text, group, judge));
  return file;
}

/** Opens the bundled story at an address on this machine, shaded for the default group: Herons. */
async function openStory(browser: ExtensionBrowser): Promise<{ page: Page; stop: () => void }> {
  const server = createServer((_request, response) =>
    response.setHeader('content-type', 'text/html').end(story),
  );
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const page = browser.context.pages()[0] ?? (await browser.context.newPage());
  await page.goto(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`);
  await browser.press(page);
  await page.waitForFunction(() => CSS.highlights.size > 0);
  return { page, stop: () => server.close() };
}

async function takePictures(browser: ExtensionBrowser, page: Page): Promise<string[]> {
  mkdirSync(pictures, { recursive: true });
  const panel = await browser.openPanel(page);
  await panel.setViewportSize({ width: 400, height: 1000 });
  await panel.waitForSelector('.reach');
  const files = [`${pictures}/page.png`, `${pictures}/panel.png`];
  await page.screenshot({ path: files[0]!, fullPage: true });
  await panel.screenshot({ path: files[1]! });
  return files;
}

function report({ group, judge }: Herons): string {
  const counts = countWords(readHtml(story).text);
  return describeReport(vet(counts, judge), group, 'The Night the Lamp Went Out', openTerminal());
}
