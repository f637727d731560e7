import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import { loadPassage } from '../../host/store/passages-store.ts';
import { StorageFault } from '../../host/store/store-item.ts';
import type { Passage } from '../../passage/kept/passage.ts';
import { findDraft } from './draft.ts';
import { type Keeper, keepPassage } from './keep-passage.ts';
import { createSavedState, type SavedState } from './saved-note.tsx';
import { noteSaved } from './use-desk.ts';

/**
 * A passage that is being edited; null until the passage is read. Every change is saved. `onParted` works as in
 * `PassageView`.
 */
export function usePassage(
  id: string,
  onParted: (title: string) => void,
): {
  passage: Passage | null;
  isGone: boolean;
  /** Whether the whole passage is stored. */
  saved: SavedState;
  /** The reason why the passage is not saved at present. */
  fault: string | null;
  change: (change: (passage: Passage) => Passage) => void;
  /** Changes the passage without showing the change. Showing it at each key would take too long. */
  keep: (change: (passage: Passage) => Passage) => void;
  show: () => void;
} {
  const [passage, setPassage] = useState<Passage | null>(null);
  const [isGone, setGone] = useState(false);
  const [saved] = useState(createSavedState);
  const [fault, setFault] = useState<string | null>(null);
  const keeper = useRef<Keeper | null>(null);
  useEffect(() => {
    const controller = new AbortController();
    void loadPassage(id).then((found) => {
      if (controller.signal.aborted) return;
      if (!found) return setGone(true);
      const draft = findDraft(id);
      const start = draft ?? found;
      keeper.current = keepPassage(
        start,
        {
          onSaved(stored, isParted) {
            setFault(null);
            saved.set(true);
            noteSaved();
            if (!isParted) return;
            onParted(stored.title);
            history.replaceState(null, '', `#passage/${stored.id}`);
            setPassage(stored);
          },
          onFault(error) {
            if (!(error instanceof StorageFault)) throw error;
            setFault(error.message);
          },
        },
        controller.signal,
      );
      // Saving the draft separates it from any text that another window has stored since.
      if (draft) keeper.current.change((now) => now);
      setPassage(start);
    });
    return () => controller.abort();
  }, [id]);
  const keep = useCallback((how: (passage: Passage) => Passage) => {
    saved.set(false);
    keeper.current?.change(how);
  }, []);
  const show = useCallback(() => setPassage(keeper.current?.passage() ?? null), []);
  const change = useCallback((how: (passage: Passage) => Passage) => {
    keep(how);
    show();
  }, []);
  return { passage, isGone, saved, fault, change, keep, show };
}
