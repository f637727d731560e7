import type { BlockWords } from './find-places.ts';

/** Words of a block by their places among the others: from the first to the one behind the last. */
export interface WordSpan {
  readonly from: number;
  readonly to: number;
}

/**
 * The words of a block whose lines are in the view; an empty span where none is. For blocks whose lines stand one below the other, so that
 * a few of them tell where the others are.
 */
export function findWordsInView(words: BlockWords): WordSpan {
  const count = words.words.length;
  const first = findFirst(count, (at) => boxOf(words, at).bottom > 0);
  return { from: first, to: findFirst(count, (at) => boxOf(words, at).top >= innerHeight, first) };
}

/** The first place from `low` on where something holds that holds for all behind it; `high` where it never does. */
function findFirst(high: number, holds: (at: number) => boolean, low = 0): number {
  while (low < high) {
    const middle = (low + high) >> 1;
    if (holds(middle)) high = middle;
    else low = middle + 1;
  }
  return low;
}

function boxOf(words: BlockWords, at: number): DOMRect {
  const [first] = words.rangesOf(at);
  const range = new Range();
  if (first) {
    range.setStart(first.startContainer, first.startOffset);
    range.setEnd(first.endContainer, first.endOffset);
  }
  return range.getBoundingClientRect();
}
