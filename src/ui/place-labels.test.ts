import fc from 'fast-check';
import { expect, test } from 'vitest';
import { placeLabels } from './place-labels.ts';

test('a label stands under its point, on the side that has room', () => {
  expect(placeLabels([{ x: 20, y: 40 }], 15)).toEqual([{ top: 43, side: 'right' }]);
  expect(placeLabels([{ x: 80, y: 40 }], 15)).toEqual([{ top: 43, side: 'left' }]);
});

test('near the bottom it stands above; near the top left it leaves the names of the marks alone', () => {
  expect(placeLabels([{ x: 20, y: 98 }], 15)[0]!.top).toBe(85);
  expect(placeLabels([{ x: 20, y: 4 }], 15)[0]!.top).toBeGreaterThanOrEqual(15);
});

test('as many as a chart has room for do not lie on one another, and all stay inside', () => {
  const point = fc.record({ x: fc.integer({ min: 0, max: 100 }), y: fc.integer({ min: 0, max: 100 }) });
  fc.assert(
    fc.property(fc.array(point, { maxLength: 4 }), (points) => {
      const labels = placeLabels(points, 15);
      for (const [i, { top, side }] of labels.entries()) {
        expect(top).toBeGreaterThanOrEqual(0);
        expect(top + 10).toBeLessThanOrEqual(100);
        for (const [j, other] of labels.slice(0, i).entries()) {
          const left = (k: number, which: string) => (which === 'left' ? points[k]!.x - 54 : points[k]!.x);
          const apart = Math.abs(left(i, side) - left(j, other.side)) >= 54;
          expect(apart || Math.abs(top - other.top) >= 10).toBe(true);
        }
      }
    }),
    { seed: 23 },
  );
});
