import { browser } from '../browser.ts';

/** The storage keys of the groups and of the teacher's own sequences. */
export const GROUPS_KEY = 'groups';
export const SEQUENCES_KEY = 'sequences';

/** Calls `onChange` with the value stored under a key each time it changes, until the signal is aborted. */
export function watchStored(key: string, onChange: (stored: unknown) => void, signal: AbortSignal): void {
  const listen = (changes: Record<string, { newValue?: unknown }>, area: string): void => {
    if (area === 'local' && changes[key]) onChange(changes[key].newValue);
  };
  browser.storage.onChanged.addListener(listen);
  signal.addEventListener('abort', () => browser.storage.onChanged.removeListener(listen));
}

/** Calls `onChange` each time the groups or the sequences change, until the signal is aborted. */
export function watchStoredGroups(onChange: () => void, signal: AbortSignal): void {
  watchStored(GROUPS_KEY, onChange, signal);
  watchStored(SEQUENCES_KEY, onChange, signal);
}
