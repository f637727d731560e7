import { nextTurn } from '../../ui/create-pause.ts';
import { say } from '../../wording/say.ts';
import { FileFault } from './file-fault.ts';

/** A file that takes longer was made to, in milliseconds of work. */
export const LONGEST = 10_000;
/** How long the page may be kept busy at a time, in milliseconds. */
const SLICE = 16;

/**
 * The time one file has. Its work is done in steps: a generator that yields wherever the page may have its turn. What the page takes
 * meanwhile is not counted.
 */
export interface FileTime {
  /** Gives the page its turn when that is due. Rejects with `FileFault` when the file has had its time. */
  pause(): Promise<void>;
  /** Does the steps one by one, with pauses. */
  run<T>(steps: Generator<void, T>): Promise<T>;
  /** How much of it is left, in milliseconds. */
  left(): number;
}

/** Begins with the first step of a file. */
export function startFileTime(longest = LONGEST, now = () => performance.now()): FileTime {
  let worked = 0;
  let since = now();
  async function turn(): Promise<void> {
    worked += now() - since;
    if (worked > longest) throw new FileFault(say('files.tooSlow'));
    await nextTurn();
    since = now();
  }
  const isDue = (): boolean => now() - since >= SLICE;
  return {
    pause: async () => {
      if (isDue()) await turn();
    },
    async run(steps) {
      for (;;) {
        const { value, done } = steps.next();
        if (done) return value;
        if (isDue()) await turn();
      }
    },
    left: () => Math.max(0, longest - worked - (now() - since)),
  };
}

/** Does all steps at once: where a short text is read, or where nobody waits for a page. */
export function finish<T>(steps: Generator<void, T>): T {
  for (;;) {
    const { value, done } = steps.next();
    if (done) return value;
  }
}
