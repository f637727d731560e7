import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { InputError } from './run-command.ts';

/** Chromium first: it is the one the tests know. */
const PLACES: Readonly<Partial<Record<NodeJS.Platform, readonly string[]>>> = {
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
};

const NONE =
  'No Chromium was found. Install one (Debian: `apt install chromium`, macOS: `brew install --cask chromium`), or set the variable CHROMIUM to its path, then run `npm start` again.';

export interface Machine {
  readonly platform: NodeJS.Platform;
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly exists: (path: string) => boolean;
}

/**
 * The path of a Chromium, Edge or Chrome: the variable CHROMIUM or CHROME_PATH, else the usual places of this system. Throws
 * an `InputError` that says how to get one.
 */
export function findChromium(
  { platform, env, exists }: Machine = { platform: process.platform, env: process.env, exists: existsSync },
): string {
  for (const variable of ['CHROMIUM', 'CHROME_PATH']) {
    const named = env[variable];
    if (!named) continue;
    if (exists(named)) return named;
    throw new InputError(
      `${variable} is set to ${named}, but there is nothing. Correct it, or unset it to search the usual places.`,
    );
  }
  const roots = platform === 'win32' ? [env.LOCALAPPDATA, env.PROGRAMFILES, env['PROGRAMFILES(X86)']] : [''];
  for (const place of PLACES[platform] ?? []) {
    for (const root of roots) {
      if (root === undefined) continue;
      const path = root === '' ? place : join(root, place);
      if (exists(path)) return path;
    }
  }
  throw new InputError(NONE);
}
