import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { InputError } from '../cli/run-command.ts';

interface Browser {
  /** The environment variables that may contain the path of the browser. */
  readonly variables: readonly string[];
  readonly places: Readonly<Partial<Record<NodeJS.Platform, readonly string[]>>>;
  /** The message if the browser is not found. */
  readonly none: string;
}

/** Chromium comes before Edge and Chrome, because the tests are made for it. */
const CHROMIUM: Browser = {
  variables: ['CHROMIUM', 'CHROME_PATH'],
  places: {
    linux: [
      '/usr/bin/chromium',
      '/usr/bin/chromium-browser',
      '/snap/bin/chromium',
      '/usr/bin/microsoft-edge',
      '/usr/bin/google-chrome-stable',
      '/usr/bin/google-chrome',
    ],
    darwin: [
      '/Applications/Chromium.app/Contents/MacOS/Chromium',
      '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
      '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    ],
    win32: [
      'Chromium/Application/chrome.exe',
      'Microsoft/Edge/Application/msedge.exe',
      'Google/Chrome/Application/chrome.exe',
    ],
  },
  none: 'No Chromium was found. Install one (Debian: `apt install chromium`, macOS: `brew install --cask chromium`), or set the variable CHROMIUM to its path, then run the command again.',
};

const FIREFOX: Browser = {
  variables: ['FIREFOX'],
  places: {
    linux: ['/usr/bin/firefox-esr', '/usr/bin/firefox'],
    darwin: ['/Applications/Firefox.app/Contents/MacOS/firefox'],
    win32: ['Mozilla Firefox/firefox.exe'],
  },
  none: 'No Firefox was found. Install one (Debian: `apt install firefox-esr`, macOS: `brew install --cask firefox`), or set the variable FIREFOX to its path, then run the command again.',
};

export interface Machine {
  readonly platform: NodeJS.Platform;
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly exists: (path: string) => boolean;
  /** Returns the path where Playwright puts a downloaded Chromium. Null if Playwright has none for this system. */
  readonly download: () => string | null;
}

/** The error if no browser is in the usual places. The message tells how to get one. */
export class NoBrowser extends InputError {}

const here: Machine = {
  platform: process.platform,
  env: process.env,
  exists: existsSync,
  download() {
    try {
      return chromium.executablePath();
    } catch {
      return null;
    }
  },
};

/** Returns the path of a Chromium, Edge or Chrome. See `findBrowser`. */
export function findChromium(machine = here): string {
  return findBrowser(CHROMIUM, machine, machine.download());
}

/** Returns the path of a Firefox. See `findBrowser`. */
export function findFirefox(machine = here): string {
  return findBrowser(FIREFOX, machine, null);
}

/**
 * Returns the browser that a variable names (CHROMIUM or CHROME_PATH, FIREFOX). Otherwise returns the browser in the
 * usual places of this system, or else the downloaded browser. Throws an `InputError` if a variable has a path that
 * does not exist, and `NoBrowser` if there is no browser.
 */
function findBrowser(
  { variables, places, none }: Browser,
  { platform, env, exists }: Machine,
  downloaded: string | null,
): string {
  for (const variable of variables) {
    const named = env[variable];
    if (!named) continue;
    if (exists(named)) return named;
    throw new InputError(
      `${variable} is set to ${named}, but there is nothing. Correct it, or unset it to search the usual places.`,
    );
  }
  const roots = platform === 'win32' ? [env.LOCALAPPDATA, env.PROGRAMFILES, env['PROGRAMFILES(X86)']] : [''];
  const usual = (places[platform] ?? []).flatMap((place) =>
    roots.flatMap((root) => (root === undefined ? [] : [root === '' ? place : join(root, place)])),
  );
  const found = [...usual, downloaded].find((path) => path !== null && exists(path));
  if (!found) throw new NoBrowser(none);
  return found;
}
