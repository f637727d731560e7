import { browser } from '../browser.ts';

/** The actions that have keys: press the button, go to the next or the previous word, open the desk. */
export type ShortcutName = 'button' | 'next-word' | 'previous-word' | 'open-desk';

/** The keys of each command, as the browser writes them (`Alt+Shift+R`); empty where there are none. */
export async function loadShortcuts(): Promise<ReadonlyMap<ShortcutName, string>> {
  const commands = await browser.commands.getAll();
  return new Map(
    commands.map(({ name = '', shortcut = '' }) => [
      (/^_execute_(?:browser_)?action$/.test(name) ? 'button' : name) as ShortcutName,
      shortcut,
    ]),
  );
}

/** The keys that press the toolbar button; empty where there are none. */
export async function loadButtonShortcut(): Promise<string> {
  return (await loadShortcuts()).get('button') ?? '';
}
