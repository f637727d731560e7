import { useEffect, useRef, useState } from 'preact/hooks';

/**
 * The interval at which typed text is noted while somebody types, in milliseconds. A crash loses no more than a second
 * of typing.
 */
const OFTEN = 700;

/** A store for typed text, by the names of fields. */
export interface TypedStore {
  load(field: string): Promise<string | null>;
  note(field: string, typed: string): Promise<void>;
  forget(field: string): Promise<void>;
}

/** The text of a field that is saved only when the field is left. Until then, the typed text is noted. */
export interface Typed {
  /** The typed text, or null while nobody has typed. */
  readonly typed: string | null;
  /** Whether the text was typed before the browser closed, and was not saved. */
  readonly isFound: boolean;
  type(text: string): void;
  /**
   * Forgets the typed text. If `kept` is a promise, the note is deleted only when the promise is fulfilled. A crash
   * before that leaves the note.
   */
  done(kept?: unknown): void;
}

/**
 * Returns the text typed in a field. The name of the field is unique among all pages. Text that was not saved when the
 * browser closed is restored.
 */
export function useTyped(store: TypedStore, field: string): Typed {
  const [typed, setTyped] = useState<string | null>(null);
  const [isFound, setFound] = useState(false);
  const now = useRef<string | null>(null);
  const timer = useRef<ReturnType<typeof setTimeout>>();
  const noted = useRef(false);
  const show = (text: string | null, found: boolean): void => {
    now.current = text;
    setTyped(text);
    setFound(found);
  };
  const note = useRef((_field: string): void => undefined);
  note.current = (name) => {
    if (timer.current === undefined) return;
    clearTimeout(timer.current);
    timer.current = undefined;
    if (now.current === null) return;
    noted.current = true;
    void store.note(name, now.current);
  };
  useEffect(() => {
    let current = true;
    const leave = (): void => note.current(field);
    addEventListener('pagehide', leave);
    void store.load(field).then((text) => {
      if (!current || text === null || now.current !== null) return;
      noted.current = true;
      show(text, true);
    });
    return () => {
      current = false;
      removeEventListener('pagehide', leave);
      leave();
    };
  }, [field]);
  return {
    typed,
    isFound,
    type(text) {
      show(text, isFound);
      timer.current ??= setTimeout(() => note.current(field), OFTEN);
    },
    done(kept) {
      clearTimeout(timer.current);
      timer.current = undefined;
      show(null, false);
      const wasNoted = noted.current;
      noted.current = false;
      // The note stays if new text was typed and noted meanwhile.
      void Promise.resolve(kept).then(() => (wasNoted && !noted.current ? store.forget(field) : undefined));
    },
  };
}
