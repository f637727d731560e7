import type { ReadBlock } from './page-text.ts';
import { isMarked, type Painter } from './paint-standings.ts';
import { watchNearness } from './watch-nearness.ts';

/** Keeps the marks of blocks in step with the standings of their words and with what is near the view. */
export interface BlockMarks {
  /** Whether what stands there would be marked now. */
  isNear(within: Node): boolean;
  /** Takes charge of a block, which is marked by `refresh` and from then on whenever it comes near. */
  add(block: ReadBlock): void;
  /** Marks a block by what its words are now, if it is near. */
  refresh(block: ReadBlock): void;
  drop(block: ReadBlock): void;
  /** Marks all blocks, near or not, until it is called off again: a printer takes the whole page. */
  markAll(blocks: Iterable<ReadBlock>, all: boolean): void;
}

/**
 * No more words of one block are marked: a book in a single text node would have the browser go through all its marks for each line it
 * draws. They are counted all the same.
 */
const MOST = 2000;

/** Marks blocks by what is known of their words at the time. */
export function markBlocks(painter: Painter, signal: AbortSignal): BlockMarks {
  const nearness = watchNearness(refresh, signal);
  let isAll = false;

  function refresh(block: ReadBlock): void {
    if (signal.aborted) return;
    if (isAll || nearness.isNear(block)) mark(block);
    else unmark(block);
  }
  function mark({ words: found, marked }: ReadBlock): void {
    const { words } = found;
    for (let at = 0; at < words.length && at < MOST; at++) {
      const { standing } = words[at]!;
      const before = marked.size > 0 ? marked.get(at) : undefined;
      if (standing === undefined || standing === before?.standing) continue;
      if (before) {
        painter.remove(before.standing, before.ranges);
        marked.delete(at);
      }
      if (!isMarked(standing)) continue;
      const ranges = found.rangesOf(at);
      painter.add(standing, ranges);
      marked.set(at, { standing, ranges });
    }
  }
  function unmark({ marked }: ReadBlock): void {
    for (const { standing, ranges } of marked.values()) painter.remove(standing, ranges);
    marked.clear();
  }

  return {
    isNear: nearness.look,
    add: nearness.add,
    refresh,
    drop(block) {
      nearness.remove(block);
      unmark(block);
    },
    markAll(blocks, all) {
      isAll = all;
      for (const block of blocks) refresh(block);
    },
  };
}
