import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import type { FuzzTarget } from './fuzz-target.ts';
import { loadTargets } from './fuzz-targets.ts';
import { describeCase, type FuzzResult } from './run-cases.ts';

/**
 * The long fuzz run: over a million cases against all code that takes input from a page, a file or an older version.
 * The same seed gives the same cases.
 * Usage: `npm run fuzz -- [cases] [seed] [name of a target]`. The exit code is 1 when a case failed.
 */
const [cases = 1_050_000, seed = 20_261_125] = process.argv.slice(2, 4).map(Number);
const only = process.argv[4];
/** The time in milliseconds after which a case is assumed never to end. */
const HANGS = 20_000;

const targets = (await loadTargets()).filter(({ name }) => only === undefined || name === only);
const shares = targets.reduce((sum, { share }) => sum + share, 0);
const queue = [...targets];
let total = 0;
let failed = 0;
const start = Date.now();
console.log(`seed ${seed}`);
await Promise.all(Array.from({ length: availableParallelism() }, work));
console.log(
  `${total.toLocaleString('en')} cases in ${Math.round((Date.now() - start) / 1000)} s, ${failed} targets failed`,
);
process.exit(failed > 0 ? 1 : 0);

async function work(): Promise<void> {
  for (let next = queue.shift(); next; next = queue.shift()) {
    const { cases: done, slowest, failure } = await runApart(next);
    total += done;
    if (failure !== null) failed++;
    const figures = `${done.toLocaleString('en').padStart(9)} cases, slowest ${slowest.toFixed(0).padStart(4)} ms`;
    console.log(`${failure === null ? 'ok    ' : 'FAILED'} ${next.name.padEnd(22)} ${figures}`);
    if (failure !== null) console.log(failure);
  }
}

/** Runs a target in a thread of its own. The thread is ended when it stays at one case for too long. */
function runApart(chosen: FuzzTarget): Promise<FuzzResult> {
  const place = new Int32Array(new SharedArrayBuffer(12));
  // This process can load TypeScript, but a worker does not inherit that.
  const code = `import('tsx/esm/api').then((tsx) => (tsx.register(), import('${new URL('fuzz-worker.ts', import.meta.url)}')))`;
  const worker = new Worker(code, {
    eval: true,
    workerData: { name: chosen.name, cases: Math.ceil((cases * chosen.share) / shares), seed, place },
  });
  return new Promise((resolve, reject) => {
    let before = -1;
    const watch = setInterval(() => {
      if (place[2] === before && before > 0) {
        const failure = `never ended: ${describeCase(chosen, place[0]!, place[1]!)}`;
        void worker.terminate().then(() => end({ cases: before, slowest: HANGS, failure }));
      }
      before = place[2]!;
    }, HANGS);
    const end = (result: FuzzResult): void => {
      clearInterval(watch);
      void worker.terminate();
      resolve(result);
    };
    worker.on('message', end);
    worker.on('error', reject);
  });
}
