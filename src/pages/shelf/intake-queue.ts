/** A text to be read, and its outcome. */
export interface IntakeItem<T> {
  readonly id: number;
  /** The name by which the teacher knows the text: the name of a file or the title of a page. */
  readonly name: string;
  readonly state: IntakeState<T>;
}

export type IntakeState<T> =
  | { readonly kind: 'waiting' | 'reading' }
  | { readonly kind: 'done'; readonly result: T }
  /** `why` is one sentence that includes the next step. */
  | { readonly kind: 'failed'; readonly why: string };

/** A text to be read, and the function that reads it. `read` rejects when its signal is aborted. */
export interface IntakeSource<T> {
  readonly name: string;
  readonly read: (signal: AbortSignal) => Promise<T>;
}

/** A queue that reads many texts one after the other. The reading can be stopped and resumed. */
export interface IntakeQueue<T> {
  /** Adds texts at the end, and continues with the waiting texts, even after a stop. */
  add(sources: readonly IntakeSource<T>[]): void;
  /** Stops the reading. A text that is being read goes back to waiting, and finished texts stay. */
  stop(): void;
  /** Continues with the waiting texts. */
  resume(): void;
  /** Reads the failed texts once more. */
  retry(): void;
  /** Removes finished and failed texts from the queue. */
  clear(): void;
}

/** The state of a queue at one moment. */
export interface IntakeView<T> {
  readonly items: readonly IntakeItem<T>[];
  readonly running: boolean;
}

/**
 * Creates an empty queue. `onChange` is called with the whole state of the queue after each change. `sayWhy` turns the
 * error of a failed read into a sentence. An abort stops the queue for good.
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
  /** Whether to resume once the interrupted read has ended. */
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
