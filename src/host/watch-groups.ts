import { browser } from './browser.ts';

/** Where the groups are kept in the extension's storage. */
export const GROUPS_KEY = 'groups';

/** Calls back with what is stored each time the groups change, until aborted. */
export function watchStoredGroups(onChange: (stored: unknown) => void, signal: AbortSignal): void {
  const listen = (changes: Record<string, { newValue?: unknown }>, area: string): void => {
    if (area === 'local' && changes[GROUPS_KEY]) onChange(changes[GROUPS_KEY].newValue);
  };
  browser.storage.onChanged.addListener(listen);
  signal.addEventListener('abort', () => browser.storage.onChanged.removeListener(listen), { once: true });
}
