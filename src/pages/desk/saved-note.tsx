import { useEffect, useState } from 'preact/hooks';
import { say } from '../../wording/say.ts';

/**
 * Whether all of a passage is stored. The state changes after every few keys, so only the parts of the page that show
 * the state watch it.
 */
export interface SavedState {
  isSaved(): boolean;
  set(isSaved: boolean): void;
  /** Calls `onChange` after each change of the state. Returns a function that ends the calls. */
  watch(onChange: (isSaved: boolean) => void): () => void;
}

export function createSavedState(): SavedState {
  const watchers = new Set<(isSaved: boolean) => void>();
  let now = true;
  return {
    isSaved: () => now,
    set(isSaved) {
      if (isSaved === now) return;
      now = isSaved;
      for (const tell of watchers) tell(now);
    },
    watch(onChange) {
      watchers.add(onChange);
      return () => void watchers.delete(onChange);
    },
  };
}

/** Says whether all of a passage is stored. */
export function SavedNote({ saved }: { readonly saved: SavedState }) {
  const [isSaved, setSaved] = useState(saved.isSaved);
  useEffect(() => {
    setSaved(saved.isSaved());
    return saved.watch(setSaved);
  }, [saved]);
  return <span class="quiet">{say(isSaved ? 'desk.saved' : 'desk.saving')}</span>;
}
