import type { Standing, WordKey } from '../analyze/types.ts';
import type { ReadBlock } from './page-text.ts';
import type { Painter } from './paint-standings.ts';
import { watchNearness } from './watch-nearness.ts';

/** Keeps the marks of blocks in step with the standings of their words and with what is near the view. */
export interface BlockMarks {
  /** Marks a block now if it is near, and else when it comes near. */
  show(block: ReadBlock): void;
  /** The standings have changed. */
  refresh(block: ReadBlock): void;
  drop(block: ReadBlock): void;
  /** Marks all blocks, near or not, until it is called off again: a printer takes the whole page. */
  markAll(blocks: Iterable<ReadBlock>, all: boolean): void;
}

/** Marks blocks by `standings`, which is read anew each time. */
export function markBlocks(
  painter: Painter,
  standings: ReadonlyMap<WordKey, Standing>,
  signal: AbortSignal,
): BlockMarks {
  const nearness = watchNearness(refresh, signal);
  let isAll = false;

  function refresh(block: ReadBlock): void {
    if (signal.aborted) return;
    if (isAll || nearness.isNear(block)) mark(block);
    else unmark(block);
  }
  function mark({ places, marked }: ReadBlock): void {
    for (const place of places) {
      const standing = standings.get(place.key);
      const before = marked.get(place);
      if (standing === undefined || standing === before) continue;
      if (before) painter.remove(before, place.ranges);
      painter.add(standing, place.ranges);
      marked.set(place, standing);
    }
  }
  function unmark({ marked }: ReadBlock): void {
    for (const [place, standing] of marked) painter.remove(standing, place.ranges);
    marked.clear();
  }

  return {
    show(block) {
      nearness.add(block);
      refresh(block);
    },
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
