import type { Worker } from 'node:worker_threads';
import { FileFault } from '../passage/files/file-fault.ts';

/** A pool of threads. Each thread does one task at a time. */
export interface WorkerPool<Task, Answer> {
  /** Returns the answer to the task. Rejects when its thread ends during the task, or when the pool is closed. */
  run(task: Task): Promise<Answer>;
  /** Ends all threads, even busy ones. */
  close(): Promise<void>;
}

/** The time and memory that a task may take before its thread is ended. */
export interface TaskLimits {
  /** In milliseconds. */
  readonly longest: number;
  /**
   * The most memory of this process with all its threads, in bytes. Above this limit the task that has been under way
   * longest is ended.
   */
  readonly mostMemory: number;
}

/** How often the memory is checked while there is work, in milliseconds. */
const LOOK = 100;

interface Job<Task, Answer> {
  readonly task: Task;
  resolve(answer: Answer): void;
  reject(error: unknown): void;
}

/**
 * Creates a pool of up to `size` threads. `start` makes a thread when there is work for it. When a thread dies, only
 * its own task rejects, and the next task starts a new thread. The error is a `FileFault` if the task exceeded
 * `limits`.
 */
export function createWorkerPool<Task, Answer>(
  start: () => Worker,
  size: number,
  { longest, mostMemory }: TaskLimits,
): WorkerPool<Task, Answer> {
  const waiting: Job<Task, Answer>[] = [];
  const idle: Worker[] = [];
  const busy = new Map<Worker, Job<Task, Answer>>();
  const timers = new Map<Worker, ReturnType<typeof setTimeout>>();
  let closed = false;
  let isEnding = false;
  const looking = setInterval(() => {
    const [oldest] = busy.keys();
    if (!oldest || isEnding || process.memoryUsage.rss() < mostMemory) return;
    isEnding = true;
    void end(oldest, TOO_LARGE).then(() => {
      isEnding = false;
    });
  }, LOOK);
  looking.unref();

  function hire(): Worker {
    const worker = start();
    worker.on('message', (answer: Answer) => {
      const job = take(worker);
      // A worker that is being ended may still answer.
      if (job) idle.push(worker);
      job?.resolve(answer);
      next();
    });
    worker.on('error', (error) => lose(worker, error));
    worker.on('exit', () => lose(worker, new Error('its thread has ended')));
    return worker;
  }

  function take(worker: Worker): Job<Task, Answer> | undefined {
    const job = busy.get(worker);
    busy.delete(worker);
    clearTimeout(timers.get(worker));
    return job;
  }

  async function end(worker: Worker, why: string): Promise<void> {
    take(worker)?.reject(new FileFault(why));
    await worker.terminate();
    next();
  }

  function lose(worker: Worker, error: unknown): void {
    const job = take(worker);
    const place = idle.indexOf(worker);
    if (place >= 0) idle.splice(place, 1);
    job?.reject(isOutOfMemory(error) ? new FileFault(TOO_LARGE) : error);
    next();
  }

  function next(): void {
    while (!closed && waiting.length > 0 && (idle.length > 0 || busy.size < size)) {
      const worker = idle.pop() ?? hire();
      const job = waiting.shift()!;
      busy.set(worker, job);
      timers.set(
        worker,
        setTimeout(() => void end(worker, TOO_LONG), longest),
      );
      worker.postMessage(job.task);
    }
  }

  return {
    run: (task) =>
      new Promise((resolve, reject) => {
        if (closed) reject(new Error('the pool is closed'));
        else waiting.push({ task, resolve, reject });
        next();
      }),
    async close() {
      closed = true;
      clearInterval(looking);
      for (const timer of timers.values()) clearTimeout(timer);
      for (const { reject } of waiting.splice(0)) reject(new Error('the pool is closed'));
      await Promise.all([...idle, ...busy.keys()].map((worker) => worker.terminate()));
    },
  };
}

const TOO_LONG = 'takes too long to read; give it in parts, or as a txt file.';
const TOO_LARGE = 'needs too much memory to read; give it in parts, or as a txt file.';

function isOutOfMemory(error: unknown): boolean {
  return error instanceof Error && 'code' in error && error.code === 'ERR_WORKER_OUT_OF_MEMORY';
}
