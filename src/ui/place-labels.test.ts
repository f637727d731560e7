import fc from 'fast-check';
import { expect, test } from 'vitest';
import { LABEL_HEIGHT, LABEL_WIDTH, placeLabels } from './place-labels.ts';

test('a label is placed in the next row below its point, on the side that has room', () => {
  expect(placeLabels([{ x: 20, y: 37 }])).toEqual([{ top: 40, side: 'right' }]);
  expect(placeLabels([{ x: 80, y: 37 }])).toEqual([{ top: 40, side: 'left' }]);
});

test('a label at the bottom goes above its point, and a label at the top left clears the marks’ names', () => {
  expect(placeLabels([{ x: 20, y: 98 }])[0]!.top).toBe(80);
  expect(placeLabels([{ x: 20, y: 4 }])[0]!.top).toBe(20);
});

test('a label hides no other point while there is room', () => {
  const points = [
    { x: 26, y: 21 },
    { x: 40, y: 35 },
  ];
  expect(placeLabels(points).map(({ top }) => top)).toEqual([40, 50]);
});

test('labels stay inside the chart and do not overlap while there are free rows', () => {
  const point = fc.record({ x: fc.integer({ min: 0, max: 100 }), y: fc.integer({ min: 0, max: 100 }) });
  fc.assert(
    fc.property(fc.array(point, { maxLength: 8 }), (points) => {
      const labels = placeLabels(points).map(({ top, side }, i) => ({
        top,
        from: side === 'left' ? points[i]!.x - LABEL_WIDTH : points[i]!.x,
      }));
      for (const [i, { top, from }] of labels.entries()) {
        expect(top).toBeGreaterThanOrEqual(0);
        expect(top + LABEL_HEIGHT).toBeLessThanOrEqual(100);
        for (const other of labels.slice(0, i)) {
          const apart = Math.abs(from - other.from) >= LABEL_WIDTH;
          expect(apart || Math.abs(top - other.top) >= LABEL_HEIGHT).toBe(true);
        }
      }
    }),
    { seed: 23 },
  );
});
