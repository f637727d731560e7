import type { WordPlace } from './find-places.ts';
import type { PageText } from './page-text.ts';

/** Finds a word at the pointer, or the next word in a direction. */
export interface WordFinder {
  /** Returns the word drawn at a point of the view, in CSS pixels, or null if the point is beside words. */
  at(x: number, y: number): WordPlace | null;
  /**
   * Returns the next wanted word after (1) or before (-1) `from`, or the first wanted word in view when `from` is null.
   * At the end of the page, the search continues from the other end.
   */
  next(from: WordPlace | null, direction: 1 | -1, isWanted: (place: WordPlace) => boolean): WordPlace | null;
}

/** Creates a finder for the words read in a document and in its shadow roots. */
export function createWordFinder(
  doc: Document,
  text: PageText,
  shadowRoots: () => readonly ShadowRoot[],
): WordFinder {
  return {
    at(x, y) {
      const caret = doc.caretPositionFromPoint(x, y, { shadowRoots: [...shadowRoots()] });
      if (caret?.offsetNode.nodeType !== Node.TEXT_NODE) return null;
      const node = caret.offsetNode as Text;
      const place = text
        .blockOf(node)
        ?.words.places.find(({ ranges }) =>
          ranges.some(
            ({ startContainer, startOffset, endOffset }) =>
              startContainer === node && startOffset <= caret.offset && caret.offset <= endOffset,
          ),
        );
      // The browser returns the nearest caret even for a blank place.
      return place && boxesOf(place).some((box) => isInside(box, x, y)) ? place : null;
    },
    next(from, direction, isWanted) {
      const places = text.inPageOrder().flatMap(({ words }) => words.places);
      const start = from ? places.indexOf(from) : places.findIndex(isInView) - direction;
      const { length } = places;
      for (let i = 1; i <= length; i++) {
        const place = places[(((start + i * direction) % length) + length) % length]!;
        if (isWanted(place)) return place;
      }
      return null;
    },
  };
}

/** Returns the boxes in which a word is drawn, in CSS pixels of the view. */
export function boxesOf({ ranges }: WordPlace): DOMRect[] {
  return ranges.flatMap(({ startContainer, startOffset, endOffset }) => {
    const node = startContainer as Text;
    if (!node.isConnected || endOffset > node.length) return [];
    const range = node.ownerDocument.createRange();
    range.setStart(node, startOffset);
    range.setEnd(node, endOffset);
    return [...range.getClientRects()].filter(({ width, height }) => width > 0 && height > 0);
  });
}

function isInside({ left, right, top, bottom }: DOMRect, x: number, y: number): boolean {
  return left <= x && x <= right && top <= y && y <= bottom;
}

function isInView(place: WordPlace): boolean {
  return boxesOf(place).some(({ top, bottom }) => bottom > 0 && top < innerHeight);
}
