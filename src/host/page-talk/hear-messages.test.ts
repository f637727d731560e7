import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';

/**
 * Tests messages between parts of the extension, over an interface like Chromium's. An answer is given to a callback,
 * and may come later if the listener returned `true`. A returned promise does not count as an answer
 * (developer.chrome.com, runtime.onMessage).
 */

type Reply = (answer?: unknown) => void;
type Listener = (message: unknown, sender: object, reply: Reply) => unknown;
const CLOSED = 'The message port closed before a response was received.';

let listeners: Set<Listener>;
beforeEach(() => {
  listeners = new Set();
  const runtime = {
    id: 'wordreach',
    lastError: undefined as { message: string } | undefined,
    onMessage: {
      addListener: (listener: Listener) => listeners.add(listener),
      removeListener: (listener: Listener) => listeners.delete(listener),
    },
    sendMessage: (message: unknown, callback: Reply) => {
      const sender = { id: 'wordreach' };
      let isAnswered = false;
      const reply: Reply = (answer) => {
        if (isAnswered) return;
        isAnswered = true;
        callback(answer === undefined ? undefined : JSON.parse(JSON.stringify(answer)));
      };
      const later = [...listeners].filter((listener) => listener(message, sender, reply) === true);
      if (isAnswered || later.length > 0) return;
      runtime.lastError = { message: CLOSED };
      callback();
      runtime.lastError = undefined;
    },
  };
  vi.stubGlobal('chrome', { runtime, storage: {} });
  vi.resetModules();
});
afterEach(() => {
  vi.doUnmock('webextension-polyfill');
  vi.unstubAllGlobals();
});

/** Sends a message as a page of the extension does. */
const ask = (message: unknown): Promise<unknown> =>
  new Promise((resolve) => chrome.runtime.sendMessage(message, resolve));

describe.each(['the library', 'the bare interface'])('messages through %s', (interfaceName) => {
  async function start() {
    if (interfaceName === 'the bare interface')
      vi.doMock('webextension-polyfill', () => import('../bare-browser.ts'));
    return import('./hear-messages.ts');
  }

  test('an answer comes back once it is ready', async () => {
    const { hearMessages, readReply } = await start();
    hearMessages(async (message) => `${message} is a harbour town`);
    expect(readReply(await ask('Tarn Quay'))).toBe('Tarn Quay is a harbour town');
  });

  test('an empty answer is distinguished from no answer', async () => {
    const { hearMessages } = await start();
    hearMessages((message) => (message === 'act' ? Promise.resolve(undefined) : undefined));
    expect(await ask('act')).toEqual({});
    expect(await ask('another')).toBeUndefined();
  });

  test('a fault comes back with its message and its details', async () => {
    const { hearMessages, readReply, RemoteFault } = await start();
    hearMessages(async () => {
      throw new Error('The table is not here.');
    });
    const reply = await ask('explain');
    expect(() => readReply(reply)).toThrow('The table is not here.');
    expect(() => readReply(reply)).toThrow(RemoteFault);
    expect((reply as { details: string }).details).toContain('hear-messages.test.ts');
  });

  test('a message from another extension is ignored', async () => {
    const { hearMessages } = await start();
    const heard = vi.fn();
    hearMessages(heard);
    for (const listener of listeners) listener('hello', { id: 'another' }, () => undefined);
    expect(heard).not.toHaveBeenCalled();
  });

  test('no message is heard after an abort', async () => {
    const { hearMessages } = await start();
    const controller = new AbortController();
    hearMessages(async () => 'here', controller.signal);
    expect(listeners.size).toBe(1);
    controller.abort();
    expect(listeners.size).toBe(0);
  });
});

test('an abort after an update of the extension throws no error in the bare interface', async () => {
  vi.doMock('webextension-polyfill', () => import('../bare-browser.ts'));
  const { hearMessages } = await import('./hear-messages.ts');
  const controller = new AbortController();
  hearMessages(async () => 'here', controller.signal);
  Object.assign(chrome, { runtime: undefined });
  expect(() => controller.abort()).not.toThrow();
});
