import type { TestProject } from 'vitest/node';
import { getBrowser } from '../src/tools/get-browser.ts';

/** Finds or gets the browser of a project before its first test; the tests then look no further. */
export async function setup({ name: project }: TestProject): Promise<void> {
  const name = project === 'firefox' ? 'firefox' : 'chromium';
  process.env[name.toUpperCase()] = await getBrowser(name);
}
