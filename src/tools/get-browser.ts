import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { createInterface } from 'node:readline/promises';
import { fileURLToPath } from 'node:url';
import { findChromium, findFirefox, NoBrowser } from './find-browser.ts';

export type BrowserName = 'chromium' | 'firefox';

/** The packages of Debian and of Ubuntu, whose names differ. The pictures need the fonts. */
const PACKAGES: Readonly<Record<BrowserName, readonly (readonly string[])[]>> = {
  chromium: [
    ['chromium', 'fonts-dejavu-core'],
    ['chromium-browser', 'fonts-dejavu-core'],
  ],
  firefox: [['firefox-esr'], ['firefox']],
};
const PLAYWRIGHT = fileURLToPath(new URL('../../node_modules/playwright-core/cli.js', import.meta.url));
/** With `SET_UP=never` nothing is installed. */
const MAY_SET_UP = process.env.SET_UP !== 'never';

const FIND = { chromium: findChromium, firefox: findFirefox } as const;

/**
 * Returns the path of a browser. If no browser exists, gets one. On Debian and Ubuntu, the browser comes from the
 * system's packages (as root, or by sudo without a password). Otherwise Playwright downloads Chromium into the user's
 * cache, after the user has agreed in a terminal. Throws an `InputError` that tells how to get a browser.
 */
export async function getBrowser(name: BrowserName): Promise<string> {
  try {
    return FIND[name]();
  } catch (error) {
    if (!(error instanceof NoBrowser) || !MAY_SET_UP) throw error;
    const isGot = installPackages(name) || (name === 'chromium' && (await download()));
    if (!isGot) throw error;
    return FIND[name]();
  }
}

/** Installs the system's packages. Returns whether the browser was installed. */
function installPackages(name: BrowserName): boolean {
  if (!existsSync('/usr/bin/apt-get')) return false;
  const asRoot = process.getuid?.() === 0 ? [] : ['sudo', '--non-interactive'];
  if (asRoot.length > 0 && !run([...asRoot, 'true'], 'ignore')) return false;
  process.stderr.write(`No ${title(name)} was found. The system's package is being installed.\n`);
  const apt = [...asRoot, 'env', 'DEBIAN_FRONTEND=noninteractive', 'apt-get', '--quiet=2'];
  if (!run([...apt, 'update'])) return false;
  return PACKAGES[name].some(
    (packages) => run([...apt, 'install', '--yes', '--no-install-recommends', ...packages]) && isThere(name),
  );
}

function isThere(name: BrowserName): boolean {
  try {
    FIND[name]();
    return true;
  } catch {
    return false;
  }
}

/** Downloads Chromium. Asks first, since the download is large. Returns whether it succeeded. */
async function download(): Promise<boolean> {
  if (!process.stdin.isTTY || !process.stderr.isTTY) return false;
  const asking = createInterface({ input: process.stdin, output: process.stderr });
  const answer = await asking.question(
    'No Chromium was found. Download one for Wordreach alone (about 170 MB, into your cache folder)? [y/N] ',
  );
  asking.close();
  if (!/^y/i.test(answer)) return false;
  return run([process.execPath, PLAYWRIGHT, 'install', 'chromium']);
}

/**
 * Runs a command and returns whether it succeeded. The output of the command goes to stderr, since stdout is for the
 * report.
 */
function run([command, ...args]: readonly string[], output: 'ignore' | 'inherit' = 'inherit'): boolean {
  const stdio = output === 'ignore' ? 'ignore' : (['ignore', process.stderr, process.stderr] as const);
  return spawnSync(command!, args, { stdio: stdio as never }).status === 0;
}

function title(name: BrowserName): string {
  return name === 'firefox' ? 'Firefox' : 'Chromium';
}
