import type { UnreadText, UnreadTextWatch, WatchUnreadText } from './watch-unread-text.ts';

/** The watch over text that is not read, whose part of the script is loaded when it is first needed. */
export interface UnreadTextLoader extends UnreadTextWatch {
  /** Begins to load the part. */
  load(): void;
}

/** The answer for a page that takes no more scripts. Its words are still counted. */
const UNKNOWN: UnreadText = { foreign: [], drawn: null, written: 0, covered: 0, rows: false, paid: false };

/** Creates a watch with the part that `load` gives. `open` starts the watch. A part that failed to load is tried again. */
export function loadUnreadText(
  load: () => Promise<WatchUnreadText>,
  open: (watch: WatchUnreadText) => UnreadTextWatch,
): UnreadTextLoader {
  let watch: UnreadTextWatch | undefined;
  let loading: Promise<WatchUnreadText> | undefined;

  function loadOnce(): Promise<WatchUnreadText> {
    loading ??= load();
    loading.catch(() => {
      loading = undefined;
    });
    return loading;
  }
  return {
    load: () => void loadOnce(),
    async look() {
      try {
        const watchUnread = await loadOnce();
        watch ??= open(watchUnread);
        return await watch.look();
      } catch {
        return UNKNOWN;
      }
    },
    forget: () => watch?.forget(),
  };
}
