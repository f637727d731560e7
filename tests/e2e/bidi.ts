import { WebSocket } from 'ws';

/** A connection that speaks WebDriver BiDi (https://www.w3.org/TR/webdriver-bidi/). */
export interface Bidi {
  /** Gives the result of a command, or fails with the browser's own sentence. */
  ask<T>(method: string, params: object): Promise<T>;
  close(): void;
}

interface Reply {
  readonly id: number | null;
  readonly result?: unknown;
  readonly error?: string;
  readonly message?: string;
}

interface Asked {
  readonly method: string;
  readonly resolve: (result: never) => void;
  readonly reject: (error: Error) => void;
}

/** Connects to a browser's `ws://` address; every open question fails when the connection ends. */
export async function connectBidi(address: string): Promise<Bidi> {
  const socket = new WebSocket(address);
  const asked = new Map<number, Asked>();
  let count = 0;
  socket.on('message', (data: Buffer) => {
    const { id, result, error, message } = JSON.parse(data.toString('utf8')) as Reply;
    const question = asked.get(id ?? -1);
    if (!question) return;
    asked.delete(id!);
    if (error === undefined) question.resolve(result as never);
    else question.reject(new Error(`${question.method}: ${error}: ${message}`));
  });
  socket.on('close', () => {
    for (const { method, reject } of asked.values())
      reject(new Error(`${method}: the browser went away before it answered.`));
    asked.clear();
  });
  await new Promise<void>((resolve, reject) => {
    socket.once('open', resolve);
    socket.once('error', reject);
  });
  return {
    ask: (method, params) =>
      new Promise((resolve, reject) => {
        count++;
        asked.set(count, { method, resolve, reject });
        socket.send(JSON.stringify({ id: count, method, params }));
      }),
    close: () => socket.close(),
  };
}
