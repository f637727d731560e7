import { browser } from '../browser.ts';
import { inTurn } from '../store/in-turn.ts';
import { readItem } from '../store/store-item.ts';
import { watchStored } from '../store/watch-stored.ts';
import type { Copy } from './reconcile.ts';

export const SYNC_KEY = 'sync-state';

/** Whether groups and sequences are copied to the browser account, and the progress of the copying. */
export interface SyncState {
  readonly on: boolean;
  /** The items that this browser and the account both held the last time. */
  readonly known: Readonly<Record<string, Copy>>;
  /** The names of items that the account has no room for. These items are kept in this browser only. */
  readonly left: readonly string[];
}

/** Loads the stored state. Copying is off at first. */
export async function loadSyncState(): Promise<SyncState> {
  return readState(await readItem(SYNC_KEY));
}

/** Replaces the stored state with the result of `change`. Changes run one after another. */
export function changeSyncState(change: (state: SyncState) => SyncState): Promise<void> {
  return inTurn(SYNC_KEY, async () => {
    await browser.storage.local.set({ [SYNC_KEY]: change(await loadSyncState()) });
  });
}

/** Calls `onChange` with the state each time it changes, until the signal is aborted. */
export function watchSyncState(onChange: (state: SyncState) => void, signal: AbortSignal): void {
  watchStored(SYNC_KEY, (stored) => onChange(readState(stored)), signal);
}

function readState(stored: unknown): SyncState {
  const { on, known, left } = (stored ?? {}) as Partial<Record<keyof SyncState, unknown>>;
  return {
    on: on === true,
    known: Object.fromEntries(
      Object.entries(known ?? {}).filter((entry): entry is [string, Copy] => isCopy(entry[1])),
    ),
    left: Array.isArray(left) ? left.filter((name) => typeof name === 'string') : [],
  };
}

function isCopy(value: unknown): value is Copy {
  const { changed, text } = (value ?? {}) as Partial<Record<keyof Copy, unknown>>;
  return Number.isFinite(changed) && (text === null || typeof text === 'string');
}
