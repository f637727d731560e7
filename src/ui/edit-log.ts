import { useEffect, useState } from 'preact/hooks';

/** An edit on this page: its description in the teacher's language (`Deleted Herons`), and a function that undoes it. */
interface Edit {
  readonly says: string;
  readonly undo: () => Promise<void>;
}

const DEPTH = 100;
let log: readonly Edit[] = [];
const listeners = new Set<(log: readonly Edit[]) => void>();

/** Notes an edit, so that it can be undone as long as the page is open. */
export function noteEdit(says: string, undo: Edit['undo']): void {
  keep([...log, { says, undo }].slice(-DEPTH));
}

/** Forgets the edits when the thing that they changed is gone. */
export function forgetEdits(): void {
  keep([]);
}

/**
 * Returns the last edit, or null when none is left, and a function that undoes the last edit. The function can be
 * called repeatedly.
 */
export function useEditLog(): { last: Edit | null; undo: () => Promise<void> } {
  const [edits, setEdits] = useState(log);
  useEffect(() => {
    listeners.add(setEdits);
    setEdits(log);
    return () => void listeners.delete(setEdits);
  }, []);
  return { last: edits.at(-1) ?? null, undo: undoLast };
}

async function undoLast(): Promise<void> {
  const edit = log.at(-1);
  if (!edit) return;
  keep(log.slice(0, -1));
  await edit.undo().catch((error: unknown) => {
    keep([...log, edit]);
    throw error;
  });
}

function keep(edits: readonly Edit[]): void {
  log = edits;
  for (const listen of listeners) listen(edits);
}
