import { type BrowserName, getBrowser } from '../src/cli/get-browser.ts';

/** Finds or gets the browsers of the browser tests before the first of them; the tests then look no further. */
export async function setup(): Promise<void> {
  for (const name of ['chromium', 'firefox'] satisfies BrowserName[])
    process.env[name.toUpperCase()] = await getBrowser(name);
}
