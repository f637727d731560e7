import { useEffect, useRef, useState } from 'preact/hooks';
import {
  type BrowserModel,
  type Download,
  findModelState,
  type ModelState,
  openModel,
} from '../../../host/language-model.ts';

/** The state of work with the browser's language model. */
export interface ModelWork {
  /** The state of the browser's model; null until the browser was asked. */
  readonly model: ModelState | null;
  readonly isWorking: boolean;
  readonly download: Download | null;
  readonly fault: string | null;
}

export interface ModelUser {
  readonly work: ModelWork;
  /** Asks the browser whether it has a model. */
  readonly look: () => void;
  /**
   * Does some work with the model; work that is still going on is cancelled. Call it at a press of the teacher, since
   * the browser allows the download only then. Resolves to false if other work has begun meanwhile. Never rejects: a
   * fault is in `work.fault`, and a cancel leaves none.
   */
  readonly run: (
    use: (opening: Promise<BrowserModel>, signal: AbortSignal) => Promise<void>,
  ) => Promise<boolean>;
  /** Cancels the work, and forgets the fault of earlier work. */
  readonly cancel: () => void;
}

const NOTHING: ModelWork = { model: null, isWorking: false, download: null, fault: null };

/** Opens the browser's model for a view, one piece of work at a time. The work ends with the view. */
export function useModel(instructions: string): ModelUser {
  const [work, setWork] = useState(NOTHING);
  const running = useRef<AbortController | null>(null);
  const set = (change: Partial<ModelWork>): void => setWork((now) => ({ ...now, ...change }));
  useEffect(() => () => running.current?.abort(), []);
  return {
    work,
    look: () => void findModelState().then((model) => set({ model })),
    cancel: () => {
      running.current?.abort();
      set({ fault: null });
    },
    async run(use) {
      running.current?.abort();
      const controller = new AbortController();
      running.current = controller;
      const { signal } = controller;
      set({ isWorking: true, download: null, fault: null });
      try {
        const opening = openModel(instructions, (download) => !signal.aborted && set({ download }), signal);
        const opened = opening.then((model) => {
          set({ model: 'available', download: null });
          return model;
        });
        opened.catch(() => undefined);
        await use(opened, signal);
      } catch (error) {
        if (!signal.aborted) set({ fault: error instanceof Error ? error.message : String(error) });
      }
      // This closes the model too.
      controller.abort();
      if (running.current !== controller) return false;
      running.current = null;
      set({ isWorking: false, download: null });
      return true;
    },
  };
}
