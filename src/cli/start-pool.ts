import { Worker } from 'node:worker_threads';
import type { VetterSettings } from './create-vetter.ts';
import type { VetAnswer, VetTask } from './vet-worker.ts';
import { createWorkerPool, type WorkerPool } from './worker-pool.ts';

/**
 * The longest time for one text, in milliseconds. A text takes seconds at most, so one that takes this long may be
 * built to take forever.
 */
const LONGEST = 60_000;
/** The memory a thread may use, in megabytes. A thread that exceeds it is ended together with its text. */
const MOST_MEMORY = 1024;
/**
 * The memory of a thread for short-lived values, in megabytes. This is twice the usual size, so the memory is cleared
 * half as often. That saves a tenth of the time.
 */
const YOUNG_MEMORY = 96;
/** The memory of the process itself, with the tables of each thread. */
const OWN_MEMORY = 512;
const MEGABYTE = 1_048_576;

/**
 * Starts up to `jobs` threads that read and vet texts, each within limits of time and memory. A text built to fill the
 * machine loses only its own result.
 */
export function startPool<Task extends VetTask, Answer extends VetAnswer>(
  settings: VetterSettings,
  jobs: number,
): WorkerPool<Task, Answer> {
  return createWorkerPool<Task, Answer>(() => startWorker(settings), jobs, {
    longest: LONGEST,
    mostMemory: (OWN_MEMORY + jobs * MOST_MEMORY) * MEGABYTE,
  });
}

/**
 * Whether threads are available. They are available in the bundle that `bundle-commands.mjs` makes, where the worker
 * file is next to this file. They are not available when the sources run directly.
 */
export const hasThreads = !import.meta.url.endsWith('.ts');

function startWorker(settings: VetterSettings): Worker {
  return new Worker(new URL('./vet-worker.mjs', import.meta.url), {
    workerData: settings,
    resourceLimits: { maxOldGenerationSizeMb: MOST_MEMORY, maxYoungGenerationSizeMb: YOUNG_MEMORY },
    execArgv: [],
  });
}
