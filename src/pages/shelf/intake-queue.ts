/** One thing to be read, and its outcome. */
export interface IntakeItem<T> {
  readonly id: number;
  /** What the teacher knows it by: the name of a file, the title of a page. */
  readonly name: string;
  readonly state: IntakeState<T>;
}

export type IntakeState<T> =
  | { readonly kind: 'waiting' | 'reading' }
  | { readonly kind: 'done'; readonly result: T }
  /** `why` is one sentence with the next step. */
  | { readonly kind: 'failed'; readonly why: string };

/** Texts to be read, and how; `read` rejects when its signal is aborted. */
export interface IntakeSource<T> {
  readonly name: string;
  readonly read: (signal: AbortSignal) => Promise<T>;
}

/** Reads many things one after the other, so that it can be stopped and taken up again. */
export interface IntakeQueue<T> {
  /** Puts more at the end, and reads on unless it was stopped. */
  add(sources: readonly IntakeSource<T>[]): void;
  /** Stops; a text that is being read waits again, texts that are done stay. */
  stop(): void;
  /** Reads on with what waits. */
  resume(): void;
  /** Reads what failed once more. */
  retry(): void;
  /** Forgets texts that are done or failed. */
  clear(): void;
}

/** What a queue shows at a moment. */
export interface IntakeView<T> {
  readonly items: readonly IntakeItem<T>[];
  readonly running: boolean;
}

/**
 * A queue without anything in it. `onChange` is called with the whole of it after each change; `sayWhy` makes a sentence of what a
 * read rejected with. Aborting stops it for good.
 */
export function createIntakeQueue<T>(options: {
  readonly onChange: (view: IntakeView<T>) => void;
  readonly sayWhy: (error: unknown) => string;
  readonly signal: AbortSignal;
}): IntakeQueue<T> {
  const { onChange, sayWhy, signal } = options;
  const sources = new Map<number, IntakeSource<T>>();
  let items: readonly IntakeItem<T>[] = [];
  let count = 0;
  let run: AbortController | null = null;
  /** Whether to read on once the text that was being read at the stop has come to its end. */
  let wanted = false;
  signal.addEventListener('abort', () => run?.abort(), { once: true });

  const tell = (): void => {
    if (!signal.aborted) onChange({ items, running: wanted || run?.signal.aborted === false });
  };
  const set = (id: number, state: IntakeState<T>): void => {
    items = items.map((item) => (item.id === id ? { ...item, state } : item));
    tell();
  };

  async function work(own: AbortController): Promise<void> {
    while (!own.signal.aborted) {
      const next = items.find(({ state }) => state.kind === 'waiting');
      if (!next) break;
      set(next.id, { kind: 'reading' });
      const state = await sources
        .get(next.id)!
        .read(own.signal)
        .then(
          (result): IntakeState<T> => ({ kind: 'done', result }),
          (error: unknown): IntakeState<T> =>
            own.signal.aborted ? { kind: 'waiting' } : { kind: 'failed', why: sayWhy(error) },
        );
      set(next.id, state);
    }
    run = null;
    tell();
    if (wanted) resume();
  }

  function resume(): void {
    wanted = run?.signal.aborted ?? false;
    if (!run && !signal.aborted) {
      run = new AbortController();
      void work(run);
    }
    tell();
  }

  return {
    add(more) {
      for (const source of more) sources.set(++count, source);
      const first = count - more.length + 1;
      items = [
        ...items,
        ...more.map(({ name }, i) => ({ id: first + i, name, state: { kind: 'waiting' } as const })),
      ];
      tell();
      resume();
    },
    stop() {
      wanted = false;
      run?.abort();
      tell();
    },
    resume,
    retry() {
      items = items.map((item) =>
        item.state.kind === 'failed' ? { ...item, state: { kind: 'waiting' } } : item,
      );
      tell();
      resume();
    },
    clear() {
      items = items.filter(({ state }) => state.kind === 'waiting' || state.kind === 'reading');
      for (const id of sources.keys()) if (!items.some((item) => item.id === id)) sources.delete(id);
      tell();
    },
  };
}
