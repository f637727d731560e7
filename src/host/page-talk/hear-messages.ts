import { describeError } from '../../analyze/index.ts';
import { browser } from '../browser.ts';

/** The page or frame that sent a message. Empty for a page of the extension that is in no tab. */
export interface Sender {
  readonly tab?: { readonly id?: number | undefined } | undefined;
  readonly frameId?: number | undefined;
}

/**
 * The form in which an answer is sent. It is needed because browsers pass on only the message of an error, and do not
 * distinguish no answer from an empty answer.
 */
export type Reply = { readonly done: unknown } | { readonly fault: string; readonly details: string };

/** A fault in another part of the extension. */
export class RemoteFault extends Error {
  /** The error in the other part, with its stack. */
  readonly details: string;

  constructor(message: string, details: string) {
    super(message);
    this.details = details;
  }
}

/**
 * Listens for messages from the extension's own parts until aborted. The result of `answer` is sent back once it is
 * ready. If `answer` returns undefined, the message is left to other listeners.
 */
export function hearMessages(
  answer: (message: unknown, sender: Sender) => Promise<unknown> | undefined,
  signal?: AbortSignal,
): void {
  const hear = (
    message: unknown,
    sender: Sender & { id?: string | undefined },
  ): Promise<Reply> | undefined => {
    const answered = sender.id === browser.runtime.id ? answer(message, sender) : undefined;
    return answered?.then(
      (done) => ({ done }),
      (error: unknown) => ({
        fault: error instanceof Error ? error.message : String(error),
        details: describeError(error),
      }),
    );
  };
  browser.runtime.onMessage.addListener(hear);
  signal?.addEventListener('abort', () => browser.runtime.onMessage.removeListener(hear));
}

/**
 * Returns the content of a reply, or undefined if nobody answered. Throws a `RemoteFault` with the fault of the other
 * part.
 */
export function readReply(reply: unknown): unknown {
  if (typeof reply !== 'object' || reply === null) return undefined;
  if ('fault' in reply)
    throw new RemoteFault(String(reply.fault), 'details' in reply ? String(reply.details) : '');
  return 'done' in reply ? reply.done : undefined;
}
