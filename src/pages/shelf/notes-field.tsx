import { useEffect, useRef, useState } from 'preact/hooks';
import { say } from '../../wording/say.ts';

/** Notes are saved `REST` after the last change, and at most `LONGEST` after the first unsaved change, in milliseconds. */
const REST = 400;
const LONGEST = 800;

/**
 * A field for notes. Notes are saved a moment after they are typed, and at once when the teacher leaves the field, the
 * view or the page.
 */
export function NotesField({ notes, onChange }: { notes: string; onChange: (notes: string) => void }) {
  const [typed, setTyped] = useState<string | null>(null);
  const unsaved = useRef<{
    notes: string;
    since: number;
    timer: ReturnType<typeof setTimeout>;
  } | null>(null);
  const save = useRef(onChange);
  save.current = onChange;
  const flush = useRef(() => {
    if (!unsaved.current) return;
    clearTimeout(unsaved.current.timer);
    save.current(unsaved.current.notes);
    unsaved.current = null;
  });
  useEffect(() => {
    const leave = flush.current;
    addEventListener('pagehide', leave);
    return () => {
      removeEventListener('pagehide', leave);
      leave();
    };
  }, []);
  return (
    <label class="shelf-notes">
      <span class="quiet">{say('shelf.notes')}</span>
      <textarea
        class="field"
        rows={3}
        value={typed ?? notes}
        onInput={(event) => {
          const { value } = event.currentTarget;
          setTyped(value);
          if (unsaved.current) clearTimeout(unsaved.current.timer);
          const now = performance.now();
          const since = unsaved.current?.since ?? now;
          const wait = Math.max(0, Math.min(REST, since + LONGEST - now));
          unsaved.current = { notes: value, since, timer: setTimeout(flush.current, wait) };
        }}
        onBlur={() => {
          flush.current();
          // From now on the field shows the stored notes, even when another window changes them.
          setTyped(null);
        }}
      />
    </label>
  );
}
