import { parentPort, workerData } from 'node:worker_threads';
import { loadTargets } from './fuzz-targets.ts';
import { runCases } from './run-cases.ts';

/** Runs the cases of one target in a worker. The main thread can end the worker when a case never ends. */
const { name, cases, seed, place } = workerData as {
  readonly name: string;
  readonly cases: number;
  readonly seed: number;
  /** The seed and number of the running case, and the number of started cases. */
  readonly place: Int32Array;
};
const found = (await loadTargets()).find((target) => target.name === name)!;
const result = await runCases(found, cases, seed, {
  // The clock measures processor time, because a case may have to wait on a busy machine.
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
