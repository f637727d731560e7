import { savePassage, watchPassages } from '../../host/store/passages-store.ts';
import type { Passage } from '../../passage/kept/passage.ts';
import { dropDraft, keepDraft } from './draft.ts';

/**
 * `REST` is the time from the last change to saving. `LONGEST` is the longest time from the first unsaved change to
 * saving. Both are in milliseconds.
 */
const REST = 400;
const LONGEST = 800;

/** Keeps one passage saved while it is worked on. */
export interface Keeper {
  readonly passage: () => Passage;
  /** Changes the passage, which is saved a moment later. */
  change(change: (passage: Passage) => Passage): void;
  /** Saves all unsaved changes at once. */
  flush(): Promise<void>;
}

export interface KeeperEvents {
  /**
   * Called when the passage was stored as given. `isParted` is true when another window had changed the passage too, so
   * that both versions are kept.
   */
  onSaved(passage: Passage, isParted: boolean): void;
  /**
   * Called when the passage could not be stored. The passage is kept as a draft, and saved as soon as saving works
   * again.
   */
  onFault(error: unknown): void;
}

/**
 * Saves a passage a moment after each change, even while changes go on, so that a crash costs at most a second of work.
 * Saves at once when the page is hidden. Saves run one after the other.
 * A failed save is tried again at the next change, when the window gets the focus again, and when another window has
 * changed the passages, which may have made room. Aborting saves the remaining changes.
 */
export function keepPassage(first: Passage, { onSaved, onFault }: KeeperEvents, signal: AbortSignal): Keeper {
  let passage = first;
  let unsaved = false;
  let hasFailed = false;
  let saving = 0;
  let since = 0;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let last: Promise<void> = Promise.resolve();

  function flush(): Promise<void> {
    clearTimeout(timer);
    if (!unsaved) return last;
    unsaved = false;
    saving++;
    last = last.then(save).finally(() => {
      saving--;
    });
    return last;
  }
  async function save(): Promise<void> {
    try {
      const { outcome, passage: stored } = await savePassage(passage);
      hasFailed = false;
      // Text typed during the save is kept. It is saved on top of the stored passage.
      dropDraft(passage.id);
      passage = { ...passage, id: stored.id, rev: stored.rev, saved: stored.saved };
      if (outcome === 'parted') passage = { ...passage, title: stored.title };
      onSaved(passage, outcome === 'parted');
    } catch (error) {
      unsaved = true;
      hasFailed = true;
      keepDraft(passage);
      onFault(error);
    }
  }
  const hide = (): void => {
    if (document.visibilityState === 'hidden') void flush();
  };
  document.addEventListener('visibilitychange', hide, { signal });
  const tryAgain = (): void => {
    if (hasFailed) void flush();
  };
  addEventListener('focus', tryAgain, { signal });
  watchPassages(tryAgain, signal);
  // A closing window does not wait for the database. An edit that is not stored by then is kept as a draft and loaded
  // again later.
  const leave = (): void => {
    if (unsaved || saving > 0) keepDraft(passage);
    void flush();
  };
  addEventListener('pagehide', leave, { signal });
  signal.addEventListener('abort', () => void flush(), { once: true });

  return {
    passage: () => passage,
    change(change) {
      passage = change(passage);
      const now = performance.now();
      if (!unsaved) since = now;
      unsaved = true;
      clearTimeout(timer);
      timer = setTimeout(() => void flush(), Math.max(0, Math.min(REST, since + LONGEST - now)));
    },
    flush,
  };
}
