import type { BlockWords } from './find-places.ts';
import { findWordsInView, type WordSpan } from './find-words-in-view.ts';
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
 * Of a block with more words than these, only those around the view are marked: the browser goes through all marks of a text node for each
 * line of it that it draws (measured in Chromium: 67 ms a view for a book in one node), so that a book would stop the page.
 */
const MOST = 1000;
/** So many at the most, however small the letters; and so many of a printed block. */
const MOST_AT_ALL = 4000;

/** The words in the view and as many around them as may be marked. */
function spanAroundView(words: BlockWords): WordSpan {
  const { from: first, to: behind } = findWordsInView(words);
  const around = Math.max(0, MOST - (behind - first)) >> 1;
  const from = Math.max(0, first - around);
  return {
    from,
    to: Math.min(words.words.length, Math.max(behind + around, from + MOST), from + MOST_AT_ALL),
  };
}

/** Marks blocks by what is known of their words at the time. */
export function markBlocks(painter: Painter, signal: AbortSignal): BlockMarks {
  const nearness = watchNearness(refresh, signal);
  /** Longer blocks, whose marks go with the view. */
  const long = new Map<ReadBlock, WordSpan>();
  let isAll = false;

  for (const type of ['scrollend', 'resize'])
    addEventListener(type, followView, { capture: true, passive: true, signal });

  function followView(): void {
    for (const [block, { from, to }] of long) {
      if (isAll || !nearness.isNear(block)) continue;
      const seen = findWordsInView(block.words);
      if (seen.from < from || seen.to > to) mark(block);
    }
  }
  function refresh(block: ReadBlock): void {
    if (signal.aborted) return;
    if (isAll || nearness.isNear(block)) mark(block);
    else unmark(block);
  }
  function mark(block: ReadBlock): void {
    const { words: found, marked } = block;
    const { words } = found;
    const { from, to } = words.length > MOST ? moveSpan(block) : { from: 0, to: words.length };
    for (let at = from; at < to; at++) {
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
  /** What is to be marked of a long block now; what is marked of the rest is taken away. */
  function moveSpan(block: ReadBlock): WordSpan {
    const { words, marked } = block;
    const span = isAll ? { from: 0, to: Math.min(words.words.length, MOST_AT_ALL) } : spanAroundView(words);
    for (const [at, { standing, ranges }] of marked) {
      if (at >= span.from && at < span.to) continue;
      painter.remove(standing, ranges);
      marked.delete(at);
    }
    long.set(block, span);
    return span;
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
      long.delete(block);
      nearness.remove(block);
      unmark(block);
    },
    markAll(blocks, all) {
      isAll = all;
      for (const block of blocks) refresh(block);
    },
  };
}
