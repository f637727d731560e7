import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import type { VetterSettings } from './create-vetter.ts';
import { explainWriting } from './explain-errno.ts';
import { type Output, OutputFault } from './open-output.ts';
import { startPool } from './start-pool.ts';
import type { VetAnswer, VetTask } from './vet-worker.ts';

/** The tasks, settings and output of a run over many texts. */
export interface Run<Task extends VetTask, Answer extends VetAnswer> {
  readonly tasks: Iterable<Task> | AsyncIterable<Task>;
  readonly settings: VetterSettings;
  readonly jobs: number;
  /** Returns the answer to a task whose thread has ended. `run` gives a part of the task to a thread again. */
  fail(task: Task, error: unknown, run: (part: Task) => Promise<Answer>): Answer | Promise<Answer>;
  /**
   * The text to print before the answers. `print` returns an answer in whole pieces, and `foot` returns the text after
   * the answers.
   */
  readonly head: string;
  print(answer: Answer): Iterable<string>;
  foot(): string;
  readonly output: Output;
  /** Stops the run. Unfinished tasks are dropped, and the output still gets its foot. */
  readonly signal: AbortSignal;
}

/** How many tasks per thread are started ahead of the output. This is enough that no thread waits for a long text. */
const AHEAD = 4;

/**
 * Gives tasks to `jobs` threads and prints the answers in the order of the tasks. Each answer is printed as soon as all
 * earlier answers are printed. While the output waits, no tasks are taken. Rejects with `OutputFault` when the output
 * takes no more. The printed part is whole then and has its foot.
 */
export async function runTasks<Task extends VetTask, Answer extends VetAnswer>({
  tasks,
  settings,
  jobs,
  fail,
  head,
  print,
  foot,
  output,
  signal,
}: Run<Task, Answer>): Promise<void> {
  const pool = startPool<Task, Answer>(settings, jobs);
  const stop = (): void => void pool.close();
  signal.addEventListener('abort', stop);
  const run = async (task: Task): Promise<Answer> => {
    try {
      return await pool.run(task);
    } catch (error) {
      signal.throwIfAborted();
      return fail(task, error, run);
    }
  };
  const runOrDrop = (task: Task): Promise<Answer | typeof DROPPED> =>
    run(task).catch((error) => {
      if (signal.aborted) return DROPPED;
      throw error;
    });
  const answers = Readable.from(until(signal, tasks)).map(runOrDrop, { concurrency: jobs * AHEAD });
  async function* printed(): AsyncGenerator<string> {
    if (head !== '') yield head;
    for await (const answer of answers as AsyncIterable<Answer | typeof DROPPED>)
      if (answer !== DROPPED) yield* print(answer);
    const end = foot();
    if (end !== '') yield end;
  }
  try {
    await pipeline(printed, output.stream, { end: false });
  } catch (error) {
    if (!WRITES.has((error as NodeJS.ErrnoException).syscall ?? '')) throw error;
    output.endWhole(foot());
    throw new OutputFault(explainWriting(error));
  } finally {
    signal.removeEventListener('abort', stop);
    await pool.close();
  }
}

/** The system calls whose errors mean that printing failed. */
const WRITES = new Set(['write', 'writev']);

const DROPPED = Symbol('dropped');

async function* until<T>(signal: AbortSignal, items: Iterable<T> | AsyncIterable<T>): AsyncGenerator<T> {
  for await (const item of items) {
    if (signal.aborted) return;
    yield item;
  }
}
