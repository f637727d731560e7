import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { listPictureCases } from '../accuracy/picture-cases.ts';
import { openPictureBench, type PictureBench } from '../accuracy/read-pictures.ts';
import { scorePicture } from '../accuracy/score-picture.ts';

/**
 * These tests are a quick part of `tests/accuracy/measure-pictures.ts`, which covers all typefaces and sizes. The
 * picture reader, run from the source code, reads rendered pages.
 */
let bench: PictureBench;
beforeAll(async () => {
  bench = await openPictureBench();
});
afterAll(() => bench?.close());

/** The least share of correct words for each kind. One page has some 250 words, so one wrong word costs 0.4 points. */
const LEAST = { screen: 0.98, fine: 0.99, scan: 0.975, columns: 0.97 } as const;

describe.each(Object.entries(LEAST))('reading rendered pages of the kind “%s”', (kind, least) => {
  // One case of each kind is tested, on a dark background if the kind has one.
  const [one] = listPictureCases([kind]).slice(kind === 'columns' ? 5 : 2);
  test(`${one!.name} has enough correct words`, async () => {
    const picture = await bench.render(one!);
    const { reading } = await bench.read(picture, one!.scan ? 'image/jpeg' : 'image/png');
    const { right, added, misses } = scorePicture(reading, one!.words);
    expect(right / one!.words.length, misses.join(', ')).toBeGreaterThanOrEqual(least);
    expect(added / one!.words.length).toBeLessThanOrEqual(1 - least);
    for (const { box } of reading.lines.flatMap(({ words }) => words))
      expect(box.left < box.right && box.top < box.bottom && box.right <= reading.width).toBe(true);
  });
});
