import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Box, type CardPlace, LEAST_HEIGHT, LEAST_WIDTH, placeCard, type Side } from './place-card.ts';

const view = box(0, 0, 1000, 700);
const card = { width: 340, height: 260 };

describe('a card is placed', () => {
  test.each<[string, Parameters<typeof placeCard>[0], Partial<CardPlace>]>([
    ['below', { word: [box(100, 200, 60, 20)], card, view }, { side: 'below', left: 100, top: 226 }],
    ['above near the foot', { word: [box(100, 600, 60, 20)], card, view }, { side: 'above', top: 334 }],
    ['inside at the right edge', { word: [box(930, 200, 60, 20)], card, view }, { side: 'below', left: 652 }],
    [
      'flush right where text runs from the right',
      { word: [box(600, 200, 60, 20)], card, view, rtl: true },
      { side: 'below', left: 320 },
    ],
    [
      'below the end of a word over two lines',
      { word: [box(900, 200, 60, 20), box(40, 224, 50, 20)], card, view },
      { side: 'below', left: 40, top: 250 },
    ],
    [
      'above the start of a word over two lines',
      { word: [box(600, 500, 60, 20), box(40, 524, 50, 20)], card, view },
      { side: 'above', left: 600 },
    ],
    [
      'where it stood, if it fits',
      { word: [box(100, 400, 60, 20)], card, view, prefer: 'above' },
      { side: 'above' },
    ],
    [
      'beside in a low view',
      { word: [box(100, 140, 60, 20)], card, view: box(0, 0, 1000, 300) },
      { side: 'right', left: 166, top: 32 },
    ],
    [
      'beside, on the left first, where text runs from the right',
      { word: [box(500, 140, 60, 20)], card, view: box(0, 0, 1000, 300), rtl: true },
      { side: 'left', left: 154 },
    ],
    [
      'lower than it would be at 400 % zoom',
      { word: [box(40, 60, 60, 20)], card, view: box(0, 0, 320, 256) },
      { side: 'below', left: 8, top: 86, width: 304, height: 162 },
    ],
    [
      'in the part of a pinched view that is seen',
      { word: [box(520, 320, 60, 20)], card, view: box(500, 300, 500, 350) },
      { side: 'below', left: 520, top: 346 },
    ],
    [
      'over the word where it fills the view',
      { word: [box(0, 0, 320, 256)], card, view: box(0, 0, 320, 256) },
      { left: 8, top: 8, width: 304 },
    ],
  ])('%s', (_where, request, place) => {
    expect(placeCard(request)).toMatchObject(place);
  });
});

test('a card is always inside the view, and beside the word while a side has room', () => {
  const request = fc.record({
    word: fc.array(anyBox(-200, 1400, 900), { minLength: 1, maxLength: 3 }),
    card: fc.record({ width: fc.integer({ min: 60, max: 400 }), height: fc.integer({ min: 30, max: 900 }) }),
    view: anyBox(0, 300, 1500).map((one) => ({ ...one, width: one.width + 100, height: one.height + 100 })),
    rtl: fc.boolean(),
    prefer: fc.constantFrom<Side>('below', 'above', 'left', 'right'),
  });
  let beside = 0;
  let over = 0;
  fc.assert(
    fc.property(request, (given) => {
      const place = placeCard(given);
      expect(contains(given.view, place)).toBe(true);
      const hasRoom = roomsAround(given.word, given.view).some(
        ({ width, height }) => width >= Math.min(LEAST_WIDTH, given.card.width) && height >= LEAST_HEIGHT,
      );
      const covers = given.word.some((line) => overlaps(line, place));
      if (hasRoom) expect(covers).toBe(false);
      if (covers) over++;
      else beside++;
    }),
    { seed: 17, numRuns: 5000 },
  );
  // Both cases must occur often enough. Otherwise the property proves little.
  expect(Math.min(beside, over)).toBeGreaterThan(50);
});

/**
 * Returns the free strips on each side of a word, by the plain definition: 8 px from the edge of the view, 6 px from
 * the word.
 */
function roomsAround(word: readonly Box[], view: Box): { width: number; height: number }[] {
  const left = Math.min(...word.map((one) => one.left)) - 6;
  const top = Math.min(...word.map((one) => one.top)) - 6;
  const right = Math.max(...word.map((one) => one.left + one.width)) + 6;
  const bottom = Math.max(...word.map((one) => one.top + one.height)) + 6;
  const [x0, y0] = [view.left + 8, view.top + 8];
  const [x1, y1] = [view.left + view.width - 8, view.top + view.height - 8];
  return [
    { width: x1 - x0, height: y1 - Math.max(bottom, y0) },
    { width: x1 - x0, height: Math.min(top, y1) - y0 },
    { width: x1 - Math.max(right, x0), height: y1 - y0 },
    { width: Math.min(left, x1) - x0, height: y1 - y0 },
  ];
}

function box(left: number, top: number, width: number, height: number): Box {
  return { left, top, width, height };
}

function anyBox(from: number, to: number, longest: number): fc.Arbitrary<Box> {
  const place = fc.integer({ min: from, max: to });
  const size = fc.integer({ min: 1, max: longest });
  return fc
    .tuple(place, place, size, size)
    .map(([left, top, width, height]) => box(left, top, width, height));
}

function contains(outer: Box, inner: Box): boolean {
  return (
    inner.left >= outer.left &&
    inner.top >= outer.top &&
    inner.left + inner.width <= outer.left + outer.width &&
    inner.top + inner.height <= outer.top + outer.height
  );
}

function overlaps(a: Box, b: Box): boolean {
  return (
    a.left < b.left + b.width &&
    b.left < a.left + a.width &&
    a.top < b.top + b.height &&
    b.top < a.top + a.height
  );
}
