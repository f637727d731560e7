/** News that every window of the extension receives, including the window that sends the news. */
export interface WindowNews<T> {
  tell(news: T): void;
  /** Calls `onNews` with each message until the signal is aborted. */
  watch(onNews: (news: T) => void, signal: AbortSignal): void;
}

/** Creates the news with this name. News must be plain data, because it is copied from window to window. */
export function createWindowNews<T>(name: string): WindowNews<T> {
  return {
    tell(news) {
      // A separate channel, so that listeners in this window also receive the news.
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
