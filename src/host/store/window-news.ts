/** News that every window of the extension hears, also the one that tells it. */
export interface WindowNews<T> {
  tell(news: T): void;
  /** Calls back until aborted. */
  watch(onNews: (news: T) => void, signal: AbortSignal): void;
}

/** Plain data only: it is copied from window to window. */
export function createWindowNews<T>(name: string): WindowNews<T> {
  return {
    tell(news) {
      // A channel of its own, so that listeners of this window hear it too.
      const channel = new BroadcastChannel(name);
      channel.postMessage(news);
      channel.close();
    },
    watch(onNews, signal) {
      const channel = new BroadcastChannel(name);
      channel.onmessage = ({ data }: MessageEvent<T>) => onNews(data);
      signal.addEventListener('abort', () => channel.close(), { once: true });
    },
  };
}
