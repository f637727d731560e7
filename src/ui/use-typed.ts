import { useEffect, useRef, useState } from 'preact/hooks';

/** Typed text is noted so often while somebody types, in milliseconds: a crash costs no more than a second of it. */
const OFTEN = 700;

/** Where typed text is noted, by the names of fields. */
export interface TypedStore {
  load(field: string): Promise<string | null>;
  note(field: string, typed: string): Promise<void>;
  forget(field: string): Promise<void>;
}

/** The text of a field that is kept only when the field is left, noted meanwhile. */
export interface Typed {
  /** Null while nobody has typed. */
  readonly typed: string | null;
  /** Whether it was typed before the browser ended, and not kept. */
  readonly isFound: boolean;
  type(text: string): void;
  /** The typed text is forgotten, once `kept` is fulfilled where it is a promise; a crash before that leaves the note. */
  done(kept?: unknown): void;
}

/** The text typed in a field, which has a name of its own among all pages; text that the browser's end left unkept is there again. */
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
      // Not text that was typed and noted meanwhile.
      void Promise.resolve(kept).then(() => (wasNoted && !noted.current ? store.forget(field) : undefined));
    },
  };
}
