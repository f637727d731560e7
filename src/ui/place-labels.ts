/** A point of a chart that needs its name beside it. Its position is in percent of the chart, from the left and the top. */
export interface LabelledPoint {
  readonly x: number;
  readonly y: number;
}

export interface PlacedLabel {
  /** Upper edge, in percent of the chart from its top; a multiple of `LABEL_HEIGHT`. */
  readonly top: number;
  /**
   * The side of its point that the label is on. A label on the right begins at its point; a label on the left ends
   * there.
   */
  readonly side: 'left' | 'right';
}

/** The height of a label and its greatest width, in percent of the chart at its narrowest. */
export const LABEL_HEIGHT = 10;
export const LABEL_WIDTH = 54;

/** The lower end of the rows on the left that hold the names of the marks. */
const MARKS_END = 20;
const rows = Array.from({ length: 100 / LABEL_HEIGHT }, (_, i) => i * LABEL_HEIGHT);

/**
 * Places each label in a row near its point. Rows below the point are tried first, since a climb leaves room there,
 * then rows above. The label takes the nearest row in which it hides no other label, no name of a mark and, if
 * possible, no other point.
 */
export function placeLabels(points: readonly LabelledPoint[]): PlacedLabel[] {
  const placed: { top: number; from: number }[] = [];
  return points.map((point) => {
    const { x, y } = point;
    const side = x > 50 ? 'left' : 'right';
    const from = side === 'left' ? x - LABEL_WIDTH : x;
    const hidesLabel = (top: number): boolean =>
      (top < MARKS_END && from < LABEL_WIDTH) ||
      placed.some((other) => other.top === top && Math.abs(other.from - from) < LABEL_WIDTH);
    const hidesPoint = (top: number): boolean =>
      points.some((other) => {
        const isBeside = other.x >= from && other.x <= from + LABEL_WIDTH;
        return isBeside && other.y > top - 2 && other.y < top + LABEL_HEIGHT + 2;
      });
    const order = [...rows.filter((top) => top > y), ...rows.filter((top) => top <= y).reverse()];
    const free = order.filter((top) => !hidesLabel(top));
    const top = free.find((row) => !hidesPoint(row)) ?? free[0] ?? order[0]!;
    placed.push({ top, from });
    return { top, side };
  });
}
