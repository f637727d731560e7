import type { Browser, Runtime } from 'webextension-polyfill';

/**
 * The part of webextension-polyfill that a script in a page needs, without the library. The browser's own interface
 * returns promises, but Chromium accepts no promise as the answer to a message.
 */

type Hear = (message: unknown, sender: Runtime.MessageSender) => Promise<unknown> | undefined;

const own = (
  import.meta.env.FIREFOX ? (globalThis as { browser?: unknown }).browser : globalThis.chrome
) as Browser;
const heard = new Map<Hear, Runtime.OnMessageListenerCallback>();

const onMessage = {
  addListener(hear: Hear): void {
    const listener: Runtime.OnMessageListenerCallback = (message, sender, reply) => {
      const answered = hear(message, sender);
      void answered?.then(reply);
      return (answered && true) as true;
    };
    heard.set(hear, listener);
    own.runtime.onMessage.addListener(listener);
  },
  // After an update of the extension, the interface no longer exists, so the listener cannot be removed from it.
  removeListener: (hear: Hear): void => own.runtime?.onMessage?.removeListener(heard.get(hear)!),
};

export default {
  runtime: {
    get id() {
      return own.runtime.id;
    },
    sendMessage: (message: unknown) => own.runtime.sendMessage(message),
    onMessage,
    getURL: (path: string) => own.runtime.getURL(path),
  },
  storage: own.storage,
};
