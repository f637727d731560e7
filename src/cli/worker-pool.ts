import type { Worker } from 'node:worker_threads';

/** Threads that do one task each at a time. */
export interface WorkerPool<Task, Answer> {
  /** Rejects when the thread ends over the task, or when the pool is closed. */
  run(task: Task): Promise<Answer>;
  /** Ends all threads, whatever they are doing. */
  close(): Promise<void>;
}

interface Job<Task, Answer> {
  readonly task: Task;
  resolve(answer: Answer): void;
  reject(error: unknown): void;
}

/**
 * A pool of up to `size` threads made by `start`, each when there is work for it. A thread that dies takes only its own
 * task with it: the next task starts another.
 */
export function createWorkerPool<Task, Answer>(start: () => Worker, size: number): WorkerPool<Task, Answer> {
  const waiting: Job<Task, Answer>[] = [];
  const idle: Worker[] = [];
  const busy = new Map<Worker, Job<Task, Answer>>();
  let closed = false;

  function hire(): Worker {
    const worker = start();
    worker.on('message', (answer: Answer) => {
      const job = busy.get(worker);
      busy.delete(worker);
      idle.push(worker);
      job?.resolve(answer);
      next();
    });
    worker.on('error', (error) => lose(worker, error));
    worker.on('exit', () => lose(worker, new Error('its thread has ended')));
    return worker;
  }

  function lose(worker: Worker, error: unknown): void {
    const job = busy.get(worker);
    busy.delete(worker);
    const place = idle.indexOf(worker);
    if (place >= 0) idle.splice(place, 1);
    job?.reject(error);
    next();
  }

  function next(): void {
    while (!closed && waiting.length > 0 && (idle.length > 0 || busy.size < size)) {
      const worker = idle.pop() ?? hire();
      const job = waiting.shift()!;
      busy.set(worker, job);
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
      for (const { reject } of waiting.splice(0)) reject(new Error('the pool is closed'));
      await Promise.all([...idle, ...busy.keys()].map((worker) => worker.terminate()));
    },
  };
}
