import { useEffect, useState } from 'preact/hooks';

/** Something done on this page: what it was (`Deleted Herons`), in the teacher's language, and how to take it back. */
interface Edit {
  readonly says: string;
  readonly undo: () => Promise<void>;
}

const DEPTH = 100;
let log: readonly Edit[] = [];
const listeners = new Set<(log: readonly Edit[]) => void>();

/** Notes something that was done, so that it can be undone as long as the page is open. */
export function noteEdit(says: string, undo: Edit['undo']): void {
  keep([...log, { says, undo }].slice(-DEPTH));
}

/** Forgets the changes, when the thing they changed is gone. */
export function forgetEdits(): void {
  keep([]);
}

/** The last change, and a way to take it back, again and again; null when there is nothing left. */
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
