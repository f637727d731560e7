import type { BlockWords } from './find-places.ts';
import { findWordsInView, type WordSpan } from './find-words-in-view.ts';
import type { ReadBlock } from './page-text.ts';
import { isMarked, type Painter } from './paint-standings.ts';
import { watchNearness } from './watch-nearness.ts';
import { watchStillness } from './watch-stillness.ts';
import { workInSlices } from './work-in-slices.ts';

/** Keeps the marks of blocks up to date with the standings of their words and with the view. */
export interface BlockMarks {
  /** Whether words inside this node would be marked now. */
  isNear(within: Node): boolean;
  /**
   * Takes charge of a block. `refreshAll` marks the block first. From then on, the block is marked whenever it comes
   * near the view.
   */
  add(block: ReadBlock): void;
  /**
   * Marks blocks by the current standings of their words, if the blocks are near the view or the page is still. The
   * page can run in between.
   */
  refreshAll(blocks: Iterable<ReadBlock>, isWanted: (block: ReadBlock) => boolean): Promise<void>;
  drop(block: ReadBlock): void;
  /** Reports that something on the page has changed. */
  noteChange(): void;
  /** Marks all blocks, near the view or not, until `markAll` is called with `all` false. A printer needs the whole page. */
  markAll(blocks: Iterable<ReadBlock>, all: boolean): void;
}

/**
 * The greatest number of words in a block that is marked as a whole. In a longer block, only the words around the view
 * are marked. For each line that the browser draws, it goes through all marks of the text node (measured in Chromium:
 * 67 ms a view for a book in one node). The marks of a whole book would therefore stop the page.
 */
const MOST = 1000;
/** The greatest number of marked words in a block, however small the letters. The limit also holds for a printed block. */
const MOST_AT_ALL = 4000;
/**
 * The greatest number of blocks on a page that is marked as a whole. On a page with more blocks (the paragraphs of a
 * long book), only blocks near the view are marked, because each mark takes memory.
 */
const MOST_WHOLE = 5000;
/**
 * The marks of more blocks than this are shown together. A slow laptop takes a fifth of a second each time it draws the
 * page with changed marks. The first mark also adds the style sheet, and the browser then computes all styles anew.
 */
const AT_ONCE = 10;

/** Returns the span of the words in the view, plus as many words around them as may be marked. */
function spanAroundView(words: BlockWords): WordSpan {
  const { from: first, to: behind } = findWordsInView(words);
  const around = Math.max(0, MOST - (behind - first)) >> 1;
  const from = Math.max(0, first - around);
  return {
    from,
    to: Math.min(words.words.length, Math.max(behind + around, from + MOST), from + MOST_AT_ALL),
  };
}

/**
 * Marks blocks by the current standings of their words. Marks cost nothing while the page does not change. So a still
 * page is marked as a whole, and scrolling needs no work. On a page that keeps changing, the cost of each change grows
 * with the number of all marks. So only blocks near the view are marked there, and the marks follow the view when
 * scrolling has ended (measured in Chromium).
 */
export function markBlocks(painter: Painter, signal: AbortSignal): BlockMarks {
  const nearness = watchNearness((block) => {
    if (isWhole) return;
    if (stillness.isScrolling()) moved.add(block);
    else refresh(block);
  }, signal);
  const stillness = watchStillness(followView, markAnew, signal);
  /** Blocks that came near the view or left it during scrolling. */
  const moved = new Set<ReadBlock>();
  let isWhole = false;
  /** Longer blocks, whose marks follow the view. */
  const long = new Map<ReadBlock, WordSpan>();
  let isAll = false;

  addEventListener('resize', followView, { passive: true, signal });

  function followView(): void {
    for (const block of moved) refresh(block);
    moved.clear();
    for (const [block, { from, to }] of long) {
      if (isAll || !isShown(block)) continue;
      const seen = findWordsInView(block.words);
      if (seen.from < from || seen.to > to) mark(block);
    }
  }
  function isShown(block: ReadBlock): boolean {
    return isAll || isWhole || nearness.isNear(block);
  }
  function refresh(block: ReadBlock): void {
    if (signal.aborted) return;
    if (isShown(block)) mark(block);
    else unmark(block);
  }
  /** Marks the whole page while it is idle, or only the blocks near the view. */
  function markAnew(whole: boolean): void {
    const { blocks } = nearness;
    if (whole && blocks.size > MOST_WHOLE) return;
    isWhole = whole;
    // The map is read while the work runs, so a block that is dropped meanwhile is left out.
    void refreshInSlices(blocks.keys(), () => new Promise((idle) => requestIdleCallback(idle)));
  }
  async function refreshAll(
    blocks: Iterable<ReadBlock>,
    isWanted: (block: ReadBlock) => boolean,
  ): Promise<void> {
    const shown = [...blocks].filter((block) => (isShown(block) || block.marked.size > 0) && isWanted(block));
    await refreshInSlices(shown);
    stillness.wait();
  }
  /**
   * Refreshes blocks. The marks of many blocks are shown together at the end, since the browser goes through all marks
   * each time.
   */
  async function refreshInSlices(
    blocks: Iterable<ReadBlock> & { readonly length?: number },
    turn?: () => Promise<unknown>,
  ): Promise<void> {
    if ((turn || blocks.length! > AT_ONCE) && !signal.aborted) painter.hold();
    await workInSlices(blocks, refresh, signal, turn);
    painter.show();
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
  /** Returns the part of a long block that is to be marked now, and removes the marks from the rest. */
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
    add(block) {
      nearness.add(block);
      // A page that was taken to be still while it was read may turn out to be a book.
      if (isWhole && nearness.blocks.size > MOST_WHOLE) markAnew(false);
    },
    refreshAll,
    drop(block) {
      long.delete(block);
      moved.delete(block);
      nearness.remove(block);
      unmark(block);
    },
    noteChange() {
      // A change while the whole page is being marked is shown at once.
      painter.show();
      stillness.noteChange();
    },
    markAll(blocks, all) {
      painter.show();
      isAll = all;
      for (const block of blocks) refresh(block);
    },
  };
}
