import { type Passage, savePassage } from '../host/passages-store.ts';
import { dropDraft, keepDraft } from './draft.ts';

/** Saves this long after the last change, in milliseconds. */
const REST = 400;

/** Keeps one passage saved while it is worked on. */
export interface Keeper {
  readonly passage: () => Passage;
  /** Changes it; it is saved a moment later. */
  change(change: (passage: Passage) => Passage): void;
  /** Saves now what is not saved yet. */
  flush(): Promise<void>;
}

/**
 * Saves a passage a moment after each change, at once when the page is hidden, one saving after the other. `onSaved` gets
 * it as it is stored, and whether another window had changed it too, so that both are kept. Aborting saves the rest.
 */
export function keepPassage(
  first: Passage,
  onSaved: (passage: Passage, isParted: boolean) => void,
  signal: AbortSignal,
): Keeper {
  let passage = first;
  let unsaved = false;
  let saving = 0;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let last: Promise<void> = Promise.resolve();

  function flush(): Promise<void> {
    clearTimeout(timer);
    if (!unsaved) return last;
    unsaved = false;
    saving++;
    const done = last.then(async () => {
      const { outcome, passage: stored } = await savePassage(passage);
      // What was typed meanwhile stays; it is saved on top of what is stored now.
      dropDraft(passage.id);
      passage = { ...passage, id: stored.id, rev: stored.rev, saved: stored.saved };
      if (outcome === 'parted') passage = { ...passage, title: stored.title };
      onSaved(passage, outcome === 'parted');
    });
    last = done
      .catch(() => {
        unsaved = true;
      })
      .finally(() => {
        saving--;
      });
    return done;
  }
  const hide = (): void => {
    if (document.visibilityState === 'hidden') void flush();
  };
  document.addEventListener('visibilitychange', hide, { signal });
  // A window that closes waits for no database: what is not stored by then is kept as a draft, and taken up again.
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
      unsaved = true;
      clearTimeout(timer);
      timer = setTimeout(() => void flush(), REST);
    },
    flush,
  };
}
