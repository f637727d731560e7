/** A point of a chart that wants its name beside it, in percent of the chart from its left and its top. */
export interface LabelledPoint {
  readonly x: number;
  readonly y: number;
}

export interface PlacedLabel {
  /** Upper edge, in percent of the chart from its top. */
  readonly top: number;
  /** Whether the label begins at its point (right of it), or ends there. */
  readonly side: 'left' | 'right';
}

/** How high a label is and how wide it may be, in percent of the chart where it is narrowest. */
const HEIGHT = 10;
const WIDTH = 54;
const GAP = 3;

/**
 * Puts each label under its point, where a climb has room, or as near as none lies on another or in the strip at the
 * upper left (`taken`), where the marks have their names.
 */
export function placeLabels(points: readonly LabelledPoint[], taken: number): PlacedLabel[] {
  const placed: { top: number; from: number }[] = [];
  return points.map(({ x, y }) => {
    const side = x > 50 ? 'left' : 'right';
    const from = side === 'left' ? x - WIDTH : x;
    const isFree = (top: number): boolean =>
      (top >= taken || from >= WIDTH) &&
      placed.every((other) => Math.abs(other.top - top) >= HEIGHT || Math.abs(other.from - from) >= WIDTH);
    const below = Array.from({ length: 10 }, (_, i) => y + GAP + i * HEIGHT);
    const above = Array.from({ length: 10 }, (_, i) => y - GAP - (i + 1) * HEIGHT);
    const inside = [...below, ...above].filter((top) => top >= 0 && top + HEIGHT <= 100);
    const top = inside.find(isFree) ?? inside[0] ?? 0;
    placed.push({ top, from });
    return { top, side };
  });
}
