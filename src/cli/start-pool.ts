import { Worker } from 'node:worker_threads';
import type { VetterSettings } from './create-vetter.ts';
import type { VetAnswer, VetTask } from './vet-worker.ts';
import { createWorkerPool, type WorkerPool } from './worker-pool.ts';

/** A text takes seconds at most; one that takes so long, in milliseconds, may be made to take for ever. */
const LONGEST = 60_000;
/** So much may a thread keep, in megabytes, before it is ended with the text it is at. */
const MOST_MEMORY = 1024;
/** Its part for short-lived values is twice the usual size, so it is cleared half as often. That saves a tenth of the time. */
const YOUNG_MEMORY = 96;
/** The process itself, with the tables of each thread. */
const OWN_MEMORY = 512;
const MEGABYTE = 1_048_576;

/** Up to `jobs` threads that read and vet texts, each within limits of time and memory: a text made to fill the machine costs itself alone. */
export function startPool<Task extends VetTask, Answer extends VetAnswer>(
  settings: VetterSettings,
  jobs: number,
): WorkerPool<Task, Answer> {
  return createWorkerPool<Task, Answer>(() => startWorker(settings), jobs, {
    longest: LONGEST,
    mostMemory: (OWN_MEMORY + jobs * MOST_MEMORY) * MEGABYTE,
  });
}

/** Whether there are threads: in the bundle that `bundle-commands.mjs` makes, where the worker is beside this; not in the sources. */
export const hasThreads = !import.meta.url.endsWith('.ts');

function startWorker(settings: VetterSettings): Worker {
  return new Worker(new URL('./vet-worker.mjs', import.meta.url), {
    workerData: settings,
    resourceLimits: { maxOldGenerationSizeMb: MOST_MEMORY, maxYoungGenerationSizeMb: YOUNG_MEMORY },
    execArgv: [],
  });
}
