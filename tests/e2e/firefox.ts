import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync } from 'node:fs';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Bidi, connectBidi } from './bidi.ts';
import { createChromeScope } from './firefox-chrome.ts';
import { createFirefoxPage, type FirefoxPage } from './firefox-page.ts';
import { waitFor } from './wait-for.ts';

const built = fileURLToPath(new URL('../../.output/firefox-mv2', import.meta.url));
const PLACES = [
  '/usr/bin/firefox-esr',
  '/usr/bin/firefox',
  '/Applications/Firefox.app/Contents/MacOS/firefox',
];

/** Nothing but this machine is reached: every other address goes to a proxy that is not there. */
const PREFERENCES = {
  'network.proxy.type': 1,
  'network.proxy.http': '127.0.0.1',
  'network.proxy.http_port': 9,
  'network.proxy.ssl': '127.0.0.1',
  'network.proxy.ssl_port': 9,
  'network.proxy.no_proxies_on': '127.0.0.1, localhost',
};

/** A real Firefox without a window, the built extension in it as a temporary add-on, in a profile of its own. */
export interface FirefoxBrowser {
  /** Address of a page of the extension. */
  inside(path: string): string;
  /** Opens an address in a tab in front, and waits until all of it is loaded. */
  open(address: string): Promise<FirefoxPage>;
  /** The same, but waits for nothing beyond the page's own text: frames of it may never load. */
  openText(address: string): Promise<FirefoxPage>;
  /** Clicks on the toolbar button for the tab in front, as a user does. */
  press(): Promise<void>;
  /** What the toolbar button's badge says. */
  badge(): Promise<string>;
  /** Shortcuts the browser has taken from the manifest, like `alt,shift R`. */
  shortcuts(): Promise<string[]>;
  /** Presses Alt, Shift and a capital letter. */
  pressShortcut(letter: string): Promise<void>;
  /** Chooses the extension's entry of the context menu, once the menu is open. */
  checkSelection(): Promise<void>;
  /** Runs a function on the document in the sidebar, where WebDriver does not reach; it sees no variables from outside. */
  inSidebar<T>(run: (document: Document) => T): Promise<T>;
  /** The same on the page in front, with the browser's rights: closed shadow roots are open to it. */
  inTab<T>(run: (document: Document) => T): Promise<T>;
  /** Turns the extension off and on, as the browser's next start does. */
  restart(): Promise<void>;
  close(): Promise<void>;
}

export async function startFirefox(): Promise<FirefoxBrowser> {
  if (!existsSync(built))
    throw new Error('The extension is not built for Firefox: run `npm run build:firefox` first.');
  const executable = findFirefox();
  const profile = await mkdtemp(join(tmpdir(), 'wordreach-'));
  const lines = Object.entries(PREFERENCES).map(
    ([name, value]) => `user_pref("${name}", ${JSON.stringify(value)});`,
  );
  await writeFile(join(profile, 'user.js'), lines.join('\n'));
  const firefox = spawn(
    executable,
    [
      ...['--headless', '--no-remote', '--profile', profile, '--width', '1200', '--height', '900'],
      ...['--remote-debugging-port=0', '--remote-allow-system-access', 'about:blank'],
    ],
    { stdio: ['ignore', 'ignore', 'pipe'] },
  );
  const ended = once(firefox, 'exit');
  let bidi: Bidi | undefined;
  const close = async (): Promise<void> => {
    // The browser may go before it has answered; if it cannot be asked at all, it is ended.
    await bidi?.ask('browser.close', {}).catch(() => undefined);
    if (!bidi) firefox.kill();
    await ended;
    await rm(profile, { recursive: true, force: true, maxRetries: 5 });
  };
  try {
    bidi = await connectBidi(`${await readAddress(firefox)}/session`);
    return { ...(await prepare(bidi)), close };
  } catch (error) {
    await close();
    throw error;
  }
}

/** The variable FIREFOX, else the usual places. */
function findFirefox(): string {
  const found = (process.env.FIREFOX ? [process.env.FIREFOX] : PLACES).find(existsSync);
  if (found) return found;
  throw new Error(
    'No Firefox was found. Install one (Debian: `apt install firefox-esr`), or set the variable FIREFOX to its path, then run the tests again.',
  );
}

/** Firefox says on its error stream where it listens. */
function readAddress({ stderr }: ChildProcess): Promise<string> {
  let said = '';
  return new Promise((resolve, reject) => {
    stderr!.on('data', (piece: Buffer) => {
      said += piece.toString('utf8');
      const address = /BiDi listening on (ws:\S+)\s/.exec(said)?.[1];
      if (address) resolve(address);
    });
    stderr!.on('end', () => reject(new Error(`Firefox ended before it could be driven: ${said}`)));
  });
}

async function prepare(bidi: Bidi): Promise<Omit<FirefoxBrowser, 'close'>> {
  await bidi.ask('session.new', { capabilities: {} });
  const extensionData = { type: 'path', path: built };
  const { extension } = await bidi.ask<{ extension: string }>('webExtension.install', { extensionData });
  const chrome = await createChromeScope(bidi, extension);
  const host = await chrome.whenRunning();
  return {
    ...chrome,
    inside: (path) => `moz-extension://${host}/${path}`,
    open: async (address) => {
      const { context } = await bidi.ask<{ context: string }>('browsingContext.create', { type: 'tab' });
      await bidi.ask('browsingContext.navigate', { context, url: address, wait: 'complete' });
      return createFirefoxPage(bidi, context);
    },
    openText: async (address) => {
      const { context } = await bidi.ask<{ context: string }>('browsingContext.create', { type: 'tab' });
      await bidi.ask('browsingContext.navigate', { context, url: address, wait: 'none' });
      const page = createFirefoxPage(bidi, context);
      const isThere = (wanted: string): boolean =>
        location.href === wanted && document.readyState !== 'loading';
      await waitFor(
        async () => {
          if (!(await page.evaluate(isThere, address))) throw new Error(`${address} is not there.`);
        },
        { timeout: 10_000 },
      );
      return page;
    },
  };
}
