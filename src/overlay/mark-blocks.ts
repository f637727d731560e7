import type { BlockWords } from './find-places.ts';
import { findWordsInView, type WordSpan } from './find-words-in-view.ts';
import { own } from './own.ts';
import type { PlaceMark, ReadBlock } from './page-text.ts';
import { isMarked, type Painter } from './paint-standings.ts';
import { watchStillness } from './watch-stillness.ts';
import { workInSlices } from './work-in-slices.ts';

/** Keeps the marks of blocks up to date with the standings of their words and with the view. */
export interface BlockMarks {
  /** Whether words inside this node would be marked now. */
  isNear(within: Node): boolean;
  /**
   * Takes charge of a block, which is near the view or not. `refresh` marks the block first. From then on, the block is
   * marked whenever it comes near the view.
   */
  add(block: ReadBlock, isNear?: boolean): void;
  /** Marks the wanted blocks by the current standings of their words, if the blocks are near the view. */
  refresh(blocks: Iterable<ReadBlock>, isWanted: (block: ReadBlock) => boolean): void;
  /** Resolves when no block waits for its marks. */
  whenMarked(): Promise<void>;
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
 * The greatest number of marks on a still page that is marked as a whole. With each frame in which marks change, the
 * browser goes through all of them (measured in Chromium at a sixth of the speed: 50 ms for 2,500 marks).
 */
const MOST_MARKS = 1500;
/**
 * The distance from the view within which blocks are marked, in CSS pixels. `NEAR` holds on a page that keeps changing.
 * It is more than one page down. `FAR` holds on a still page.
 */
const NEAR = 1000;
const FAR = 2500;
/** The time in milliseconds after which the blocks of a changed page are looked at again. */
const SOON = 200;

/** Text directly in these elements is in no block of its own, and counts as near. */
const ALWAYS = new Set(['HTML', 'BODY']);

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
 * page with few marks is marked as a whole, and scrolling needs no work. On a page that keeps changing, the cost of each
 * change grows with the number of all marks. So only blocks near the view are marked there. The marks follow the view
 * when scrolling has ended, since a change of marks during scrolling is dear (measured in Chromium). Blocks are looked at
 * only then: an observer of all blocks would cost time with every frame.
 */
export function markBlocks(painter: Painter, signal: AbortSignal): BlockMarks {
  const stillness = watchStillness(followView, setReach, signal);
  const blocks = new Set<ReadBlock>();
  const near = new Set<ReadBlock>();
  /** Blocks whose marks are not up to date. */
  const waiting = new Set<ReadBlock>();
  let drawing: Promise<void> | undefined;
  let soon: ReturnType<typeof setTimeout> | undefined;
  let margin = NEAR;
  let isWhole = false;
  /** Longer blocks, whose marks follow the view. */
  const long = new Map<ReadBlock, WordSpan>();
  let isAll = false;

  addEventListener('resize', followView, { passive: true, signal });
  // Pictures that load move the text below them.
  addEventListener('load', lookSoon, { passive: true, capture: true, signal });
  signal.addEventListener('abort', () => clearTimeout(soon));

  function followView(): void {
    if (!isWhole) void lookAround();
    for (const [block, { from, to }] of long) {
      if (isAll || !isShown(block)) continue;
      const seen = findWordsInView(block.words);
      if (seen.from < from || seen.to > to) mark(block);
    }
  }
  function lookSoon(): void {
    if (isWhole || signal.aborted) return;
    soon ??= setTimeout(() => {
      soon = undefined;
      // The end of scrolling is followed anyway.
      if (!stillness.isScrolling()) followView();
    }, SOON);
  }
  /** Finds out which blocks have come near the view or left it, and brings their marks up to date. */
  async function lookAround(): Promise<void> {
    const moved: ReadBlock[] = [];
    const look = (block: ReadBlock): void => {
      const isNear = isNearNow(block.within);
      if (near.has(block) === isNear || !blocks.has(block)) return;
      if (isNear) near.add(block);
      else near.delete(block);
      moved.push(block);
    };
    await workInSlices(blocks, look, signal);
    wait(moved);
  }
  function isNearNow(within: Node): boolean {
    const element = own(within instanceof Element ? within : document.documentElement);
    if (ALWAYS.has(element.tagName)) return true;
    const { top, bottom } = element.getBoundingClientRect();
    return bottom > -margin && top < innerHeight + margin;
  }
  function isShown(block: ReadBlock): boolean {
    return isAll || isWhole || near.has(block);
  }
  /** Marks the whole page or the blocks around the view, depending on the number of marks and on the page. */
  function setReach(isStill: boolean): void {
    isWhole = isStill && hasFewMarks();
    margin = isStill ? FAR : NEAR;
    wait(blocks);
    followView();
  }
  function hasFewMarks(): boolean {
    let marks = 0;
    for (const { words } of blocks) {
      for (const { standing } of words.words) if (standing && isMarked(standing)) marks++;
      if (marks > MOST_MARKS) return false;
    }
    return true;
  }
  function wait(changed: Iterable<ReadBlock>): void {
    for (const block of changed) if (isShown(block) || block.marked) waiting.add(block);
    if (waiting.size === 0) return;
    drawing ??= drawWaiting().finally(() => {
      drawing = undefined;
    });
  }
  /**
   * Brings the marks of the waiting blocks up to date in slices, and shows all of them together. With each frame in which
   * marks change, the browser draws all marked text anew.
   */
  async function drawWaiting(): Promise<void> {
    while (waiting.size > 0 && !signal.aborted) {
      const changed = [...waiting];
      waiting.clear();
      painter.hold();
      await workInSlices(changed, refresh, signal);
      painter.show();
    }
  }
  function refresh(block: ReadBlock): void {
    if (!blocks.has(block)) return;
    if (isShown(block)) mark(block);
    else unmark(block);
  }
  function mark(block: ReadBlock): void {
    const { words: found } = block;
    const { words } = found;
    const { from, to } = words.length > MOST ? moveSpan(block) : { from: 0, to: words.length };
    for (let at = from; at < to; at++) {
      const { standing } = words[at]!;
      const before = block.marked?.get(at);
      if (standing === undefined || standing === before?.standing) continue;
      if (before) {
        painter.remove(before.standing, before.ranges);
        block.marked!.delete(at);
      }
      if (!isMarked(standing)) continue;
      const ranges = found.rangesOf(at);
      painter.add(standing, ranges);
      block.marked ??= new Map();
      block.marked.set(at, { standing, ranges });
    }
  }
  /** Returns the part of a long block that is to be marked now, and removes the marks from the rest. */
  function moveSpan(block: ReadBlock): WordSpan {
    const { words, marked = new Map<number, PlaceMark>() } = block;
    const span = isAll ? { from: 0, to: Math.min(words.words.length, MOST_AT_ALL) } : spanAroundView(words);
    for (const [at, { standing, ranges }] of marked) {
      if (at >= span.from && at < span.to) continue;
      painter.remove(standing, ranges);
      marked.delete(at);
    }
    long.set(block, span);
    return span;
  }
  function unmark(block: ReadBlock): void {
    for (const { standing, ranges } of block.marked?.values() ?? []) painter.remove(standing, ranges);
    block.marked = undefined;
  }

  return {
    isNear: isNearNow,
    add(block, isNear = isNearNow(block.within)) {
      blocks.add(block);
      if (isNear) near.add(block);
    },
    refresh(changed, isWanted) {
      // A page that was taken to be still while it was read may turn out to be a book. Where no block is near the view,
      // no marks disturb the page yet, so the farther ones are made at once.
      if (isWhole ? !hasFewMarks() : blocks.size > 0 && near.size === 0) setReach(true);
      wait([...changed].filter(isWanted));
      stillness.wait();
    },
    async whenMarked() {
      while (drawing) await drawing;
    },
    drop(block) {
      long.delete(block);
      blocks.delete(block);
      near.delete(block);
      waiting.delete(block);
      unmark(block);
    },
    noteChange() {
      stillness.noteChange();
      lookSoon();
    },
    markAll(every, all) {
      painter.show();
      isAll = all;
      for (const block of every) refresh(block);
    },
  };
}
