import type { TestProject } from 'vitest/node';
import { getBrowser } from '../src/tools/get-browser.ts';

/**
 * Finds or downloads the browser of a project before the project's first test. The tests then use this browser without
 * searching again.
 */
export async function setup({ name: project }: TestProject): Promise<void> {
  const name = project === 'firefox' ? 'firefox' : 'chromium';
  process.env[name.toUpperCase()] = await getBrowser(name);
}
