import { nextTurn } from '../../ui/create-pause.ts';
import { say } from '../../wording/say.ts';
import { FileFault } from './file-fault.ts';

/** The longest time that a file may take, in milliseconds of work. A file that takes longer was made to do so. */
export const LONGEST = 10_000;
/** The longest time that the page may be kept busy at once, in milliseconds. */
const SLICE = 16;

/**
 * The time limit for one file. The work is done in steps by a generator, which yields wherever the page may have its
 * turn. The time that the page takes meanwhile is not counted.
 */
export interface FileTime {
  /** Gives the page its turn when that is due. Rejects with `FileFault` when the file's time is used up. */
  pause(): Promise<void>;
  /** Runs the steps one by one, with pauses. */
  run<T>(steps: Generator<void, T>): Promise<T>;
  /** Returns the time that is left, in milliseconds. */
  left(): number;
}

/** Starts the time limit of a file, at its first step. */
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

/** Runs all steps at once. Used where a short text is read, or where nobody waits for a page. */
export function finish<T>(steps: Generator<void, T>): T {
  for (;;) {
    const { value, done } = steps.next();
    if (done) return value;
  }
}
