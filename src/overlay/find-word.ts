import type { WordPlace } from './find-places.ts';
import type { PageText } from './page-text.ts';

/** Looks for a word by the pointer, or by what comes after another. */
export interface WordFinder {
  /** The word drawn at a point of the view, in CSS pixels; null beside words. */
  at(x: number, y: number): WordPlace | null;
  /** The wanted word after (1) or before (-1) another, or the first in view; goes on at the other end. */
  next(from: WordPlace | null, direction: 1 | -1, isWanted: (place: WordPlace) => boolean): WordPlace | null;
}

/** A finder for the words read of a document and of its shadow roots. */
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
      // The browser names the nearest caret even for a blank place.
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

/** The boxes a word is drawn in, in the view's CSS pixels. */
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
