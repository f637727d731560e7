import { browser } from '../browser.ts';

/** The actions that have keyboard shortcuts: press the button, go to the next or the previous word, open the desk. */
export type ShortcutName = 'button' | 'next-word' | 'previous-word' | 'open-desk';

/**
 * Returns the keys of each command, as the browser writes them (`Alt+Shift+R`). The string is empty for a command
 * without keys.
 */
export async function loadShortcuts(): Promise<ReadonlyMap<ShortcutName, string>> {
  const commands = await browser.commands.getAll();
  return new Map(
    commands.map(({ name = '', shortcut = '' }) => [
      (/^_execute_(?:browser_)?action$/.test(name) ? 'button' : name) as ShortcutName,
      shortcut,
    ]),
  );
}

/** Returns the keys that press the toolbar button, or an empty string if there are none. */
export async function loadButtonShortcut(): Promise<string> {
  return (await loadShortcuts()).get('button') ?? '';
}
