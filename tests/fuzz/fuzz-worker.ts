import { parentPort, workerData } from 'node:worker_threads';
import { loadTargets } from './fuzz-targets.ts';
import { runCases } from './run-cases.ts';

/** Runs the cases of one target apart from the main thread, which can end it when a case does not. */
const { name, cases, seed, place } = workerData as {
  readonly name: string;
  readonly cases: number;
  readonly seed: number;
  /** The seed and number of the case that is run, and how many were begun. */
  readonly place: Int32Array;
};
const found = (await loadTargets()).find((target) => target.name === name)!;
const result = await runCases(found, cases, seed, {
  // Of the processor, since a busy machine lets a case wait.
  now: () => {
    const { user, system } = process.cpuUsage();
    return (user + system) / 1000;
  },
  tell: (batch, n) => {
    place[0] = batch;
    place[1] = n;
    place[2]!++;
  },
});
parentPort!.postMessage(result);
