/** A box in CSS pixels of the view. A DOMRect fits this type. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

export type Side = 'below' | 'above' | 'right' | 'left';

export interface CardPlace extends Box {
  readonly side: Side;
}

interface PlaceRequest {
  /** The boxes in which the word is drawn, one for each line. */
  readonly word: readonly Box[];
  /** The size that the card would have without a limit on its room. */
  readonly card: { readonly width: number; readonly height: number };
  /** The part of the page that can be seen. */
  readonly view: Box;
  /** Whether the word's text runs from right to left. The card is then aligned with the right edge of the word. */
  readonly rtl?: boolean;
  /** The side on which the card is now. The card stays there if it fits. */
  readonly prefer?: Side;
}

/** The gap between the card and the word. */
const GAP = 6;
/** The gap between the card and the edge of the view. */
const MARGIN = 8;
/** The minimum height and width of a useful card. */
export const LEAST_HEIGHT = 72;
export const LEAST_WIDTH = 240;

/**
 * Returns the place of a card: entirely below the word, else entirely above, else entirely beside it. If the card fits
 * nowhere, it takes the side with the most room and is made lower (its content scrolls). The card is always inside the
 * view. It covers the word only when no side has `LEAST_HEIGHT` by `LEAST_WIDTH` (a word in letters as large as the
 * view).
 */
export function placeCard({ word, card, view, rtl = false, prefer = 'below' }: PlaceRequest): CardPlace {
  const inner = inset(view, MARGIN);
  const box = union(word);
  const right = box.left + box.width;
  const bottom = box.top + box.height;
  const innerRight = inner.left + inner.width;
  const innerBottom = inner.top + inner.height;
  const rooms: Readonly<Record<Side, Box>> = {
    below: between(inner.left, Math.max(inner.top, bottom + GAP), innerRight, innerBottom),
    above: between(inner.left, inner.top, innerRight, Math.min(innerBottom, box.top - GAP)),
    right: between(Math.max(inner.left, right + GAP), inner.top, innerRight, innerBottom),
    left: between(inner.left, inner.top, Math.min(innerRight, box.left - GAP), innerBottom),
  };
  const order: readonly Side[] = rtl
    ? [prefer, 'below', 'above', 'left', 'right']
    : [prefer, 'below', 'above', 'right', 'left'];
  const width = Math.min(card.width, inner.width);
  const whole = order.find((side) => rooms[side].width >= width && rooms[side].height >= card.height);
  const side = whole ?? roomiest(order, rooms, width);
  const room = side ? rooms[side] : inner;
  const height = Math.min(card.height, room.height);
  const size = { width: Math.min(width, room.width), height };
  // A word broken over two lines begins at the end of one and ends at the start of the other.
  const near = (side === 'above' ? word[0] : word.at(-1)) ?? box;
  const flush = rtl ? near.left + near.width - size.width : near.left;
  const left = side === 'right' ? right + GAP : side === 'left' ? box.left - GAP - size.width : flush;
  const top = side === 'above' ? box.top - GAP - height : side === 'below' ? bottom + GAP : box.top;
  return {
    side: side ?? 'below',
    left: clamp(left, room.left, room.left + room.width - size.width),
    top: clamp(top, room.top, room.top + room.height - height),
    ...size,
  };
}

/** Returns the usable side that shows the most of a card, or undefined when no side is usable. */
function roomiest(
  order: readonly Side[],
  rooms: Readonly<Record<Side, Box>>,
  width: number,
): Side | undefined {
  const usable = order.filter(
    (side) => rooms[side].height >= LEAST_HEIGHT && rooms[side].width >= Math.min(LEAST_WIDTH, width),
  );
  const shown = (side: Side): number => Math.min(rooms[side].width, width) * rooms[side].height;
  return usable.toSorted((a, b) => shown(b) - shown(a))[0];
}

function union(boxes: readonly Box[]): Box {
  return between(
    Math.min(...boxes.map(({ left }) => left)),
    Math.min(...boxes.map(({ top }) => top)),
    Math.max(...boxes.map(({ left, width }) => left + width)),
    Math.max(...boxes.map(({ top, height }) => top + height)),
  );
}

function inset({ left, top, width, height }: Box, by: number): Box {
  return between(left + by, top + by, left + width - by, top + height - by);
}

function between(left: number, top: number, right: number, bottom: number): Box {
  return { left, top, width: Math.max(0, right - left), height: Math.max(0, bottom - top) };
}

/** Returns the value from `low` to `high` that is nearest to `value`, or `low` if the range is empty. */
function clamp(value: number, low: number, high: number): number {
  return Math.max(low, Math.min(value, high));
}
