import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { createInterface } from 'node:readline/promises';
import { chromium } from 'playwright-core';
import { findChromium, findFirefox } from './find-browser.ts';
import { InputError } from './run-command.ts';

export type BrowserName = 'chromium' | 'firefox';

/** Packages of Debian and of Ubuntu, whose names differ; the fonts are those the pictures need. */
const PACKAGES: Readonly<Record<BrowserName, readonly (readonly string[])[]>> = {
  chromium: [
    ['chromium', 'fonts-dejavu-core'],
    ['chromium-browser', 'fonts-dejavu-core'],
  ],
  firefox: [['firefox-esr'], ['firefox']],
};
/** Say `SET_UP=never` to have nothing installed. */
const MAY_SET_UP = process.env.SET_UP !== 'never';

/**
 * The path of a browser: one that is there; else one that is got: by the system's packages on Debian and Ubuntu (as root or by
 * sudo without a password), else, for Chromium, by Playwright's download into the user's cache, asked for once in a terminal.
 * Throws an `InputError` that says how to get one.
 */
export async function getBrowser(name: BrowserName): Promise<string> {
  try {
    return find(name);
  } catch (error) {
    if (!(error instanceof InputError) || !MAY_SET_UP || isNamed(name)) throw error;
    if (installPackages(name)) return find(name);
    if (name === 'chromium' && (await download())) return chromium.executablePath();
    throw error;
  }
}

function find(name: BrowserName): string {
  if (name === 'firefox') return findFirefox();
  try {
    return findChromium();
  } catch (error) {
    const downloaded = chromium.executablePath();
    if (!isNamed(name) && existsSync(downloaded)) return downloaded;
    throw error;
  }
}

/** A variable that names a browser says which one is wanted; another one is none. */
function isNamed(name: BrowserName): boolean {
  const { CHROMIUM, CHROME_PATH, FIREFOX } = process.env;
  return Boolean(name === 'firefox' ? FIREFOX : (CHROMIUM ?? CHROME_PATH));
}

/** Whether the browser was installed. */
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
    return existsSync(find(name));
  } catch {
    return false;
  }
}

/** Asks first, since it is large. Whether it is there then. */
async function download(): Promise<boolean> {
  if (!process.stdin.isTTY || !process.stderr.isTTY) return false;
  const asking = createInterface({ input: process.stdin, output: process.stderr });
  const answer = await asking.question(
    'No Chromium was found. Download one for Wordreach alone (about 170 MB, into your cache folder)? [y/N] ',
  );
  asking.close();
  if (!/^y/i.test(answer)) return false;
  return run([process.execPath, 'node_modules/playwright-core/cli.js', 'install', 'chromium']);
}

/** What it prints goes to stderr: stdout is for the report. */
function run([command, ...args]: readonly string[], output: 'ignore' | 'inherit' = 'inherit'): boolean {
  const stdio = output === 'ignore' ? 'ignore' : (['ignore', process.stderr, process.stderr] as const);
  return spawnSync(command!, args, { stdio: stdio as never }).status === 0;
}

function title(name: BrowserName): string {
  return name === 'firefox' ? 'Firefox' : 'Chromium';
}
