import { browser } from '../browser.ts';

/** The keys that press the toolbar button, as the browser writes them (`Alt+Shift+R`); empty where there are none. */
export async function loadButtonShortcut(): Promise<string> {
  const commands = await browser.commands.getAll();
  return commands.find(({ name }) => /^_execute_(?:browser_)?action$/.test(name ?? ''))?.shortcut ?? '';
}
