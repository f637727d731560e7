import type { CDPSession } from 'playwright-core';

/**
 * The real side panel. Playwright does not list the panel, so the panel is driven through the browser's own debugging
 * session.
 */
export interface SidePanel {
  /** Runs a function in the panel. The function sees no variables from outside. Its result must fit into JSON. */
  evaluate<T>(run: () => T | Promise<T>): Promise<T>;
  /** Errors in the panel that nobody caught. */
  readonly errors: readonly string[];
}

interface Message {
  readonly id?: number;
  readonly method?: string;
  readonly params?: {
    readonly exceptionDetails: { readonly text: string; exception?: { description?: string } };
  };
  readonly result?: {
    readonly result?: { readonly value?: unknown };
    readonly exceptionDetails?: { readonly text: string; exception?: { description?: string } };
  };
}

/** Returns the open side panel, or null if there is none. `session` is the session of the browser. */
export async function openSidePanel(session: CDPSession): Promise<SidePanel | null> {
  const { targetInfos } = await session.send('Target.getTargets');
  const panel = targetInfos.find(({ url }) => url.includes('sidepanel.html'));
  return panel ? attach(session, panel.targetId) : null;
}

/** Waits for the next side panel that opens. Call this function before the press. Targets must be discovered. */
export function nextSidePanel(session: CDPSession, patience: number): Promise<SidePanel> {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(() => done(new Error('No side panel opened.')), patience);
    const look = ({ targetInfo }: { targetInfo: { url: string; targetId: string } }): void => {
      if (targetInfo.url.includes('sidepanel.html')) done(targetInfo.targetId);
    };
    const done = (found: string | Error): void => {
      clearTimeout(timer);
      session.off('Target.targetCreated', look);
      session.off('Target.targetInfoChanged', look);
      if (found instanceof Error) reject(found);
      else attach(session, found).then(resolve, reject);
    };
    session.on('Target.targetCreated', look);
    session.on('Target.targetInfoChanged', look);
  });
}

async function attach(session: CDPSession, targetId: string): Promise<SidePanel> {
  const { sessionId } = await session.send('Target.attachToTarget', { targetId, flatten: false });
  const asked = new Map<number, (message: Message) => void>();
  const errors: string[] = [];
  session.on('Target.receivedMessageFromTarget', (event) => {
    if (event.sessionId !== sessionId) return;
    const message = JSON.parse(event.message) as Message;
    asked.get(message.id ?? -1)?.(message);
    if (message.method === 'Runtime.exceptionThrown') errors.push(`panel: ${sayError(message.params!)}`);
  });
  let count = 0;
  const send = (method: string, params: object): Promise<Message> =>
    new Promise((resolve, reject) => {
      const id = ++count;
      asked.set(id, resolve);
      const message = JSON.stringify({ id, method, params });
      session.send('Target.sendMessageToTarget', { sessionId, message }).catch(reject);
    });
  await send('Runtime.enable', {});
  return {
    errors,
    async evaluate(run) {
      const { result } = await send('Runtime.evaluate', {
        expression: `(${String(run)})()`,
        awaitPromise: true,
        returnByValue: true,
      });
      if (result?.exceptionDetails) throw new Error(sayError(result as Required<typeof result>));
      return result?.result?.value as never;
    },
  };
}

function sayError({ exceptionDetails }: NonNullable<Message['params']>): string {
  return exceptionDetails.exception?.description ?? exceptionDetails.text;
}
