import type { BlockWords } from './find-places.ts';

/** A span of words in a block, by index: `from` is the first word, `to` is the index after the last. */
export interface WordSpan {
  readonly from: number;
  readonly to: number;
}

/**
 * Returns the words of a block whose lines are in the view, or an empty span if there are none. The lines of the block
 * must follow one below the other, because the search checks only a few of them.
 */
export function findWordsInView(words: BlockWords): WordSpan {
  const count = words.words.length;
  const first = findFirst(count, (at) => boxOf(words, at).bottom > 0);
  return { from: first, to: findFirst(count, (at) => boxOf(words, at).top >= innerHeight, first) };
}

/**
 * Returns the first index from `low` on that passes the test, or `high` if none does. All indexes after a passing one
 * must pass too.
 */
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
