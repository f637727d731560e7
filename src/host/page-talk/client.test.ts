import { beforeEach, describe, expect, test, vi } from 'vitest';
import type { FrameWords } from '../../contract/page-contract.ts';
import { askFrames, askWords, followWords, goToPlace, listInnerFrames } from './client.ts';
import type { Question } from './messages.ts';

/**
 * The answer of each frame of the tab to a question, by the frame's number: a value, or a promise of one. A frame
 * without an entry has no script.
 */
const frames = vi.hoisted(() => new Map<number, (question: Question) => unknown>());

vi.mock('../browser.ts', () => ({
  browser: {
    scripting: {
      executeScript: async () => {
        if (!frames.has(0)) throw new Error('this page may not be read');
        return [...frames.keys()].map((frameId) => ({ frameId }));
      },
    },
    tabs: {
      sendMessage: async (_tab: number, question: Question, { frameId = 0 }) => {
        const answer = frames.get(frameId);
        if (!answer) throw new Error('nobody hears');
        return { done: await answer(question) };
      },
    },
  },
}));
beforeEach(() => {
  frames.clear();
  vi.useRealTimers();
});

function words(url: string, ...read: string[]): FrameWords {
  return {
    ...{ title: url, byline: null, date: null, url, skipped: 1, scope: 'page', selection: false },
    ...{ foreign: [], drawn: null, written: 2, covered: 0, rows: false, paid: false, restless: false },
    ...{ language: 'en', takenAway: false, fault: null },
    words: read.map((word) => [word, 1]),
  };
}
const never = () => new Promise<never>(() => undefined);

/** Returns the number of words and the number of silent frames, as reported each time. */
async function follow(): Promise<(readonly [words: number, silent: number])[]> {
  const told: (readonly [number, number])[] = [];
  for await (const { words, silentFrames } of followWords(1)) told.push([words.length, silentFrames]);
  return told;
}

describe('the words of a page and its frames', () => {
  test('are given first without frames, then with each frame that has words, and complete at the end', async () => {
    frames.set(0, () => words('top', 'fog', 'tide'));
    frames.set(3, async () => words('slow', 'net'));
    frames.set(2, () => words('quick', 'rope'));
    expect((await follow()).map(([count]) => count)).toEqual([2, 3, 4]);
    expect(await askWords(1)).toMatchObject({ title: 'top', skipped: 3, written: 6, silentFrames: 0 });
  });

  test('are not given again after a frame without words, unless that frame is the last', async () => {
    frames.set(0, () => words('top', 'fog'));
    frames.set(1, () => words('empty'));
    frames.set(2, async () => words('full', 'net'));
    expect(await follow()).toEqual([
      [1, 0],
      [2, 0],
    ]);
    frames.set(2, async () => words('empty too'));
    expect(await follow()).toEqual([
      [1, 0],
      [1, 0],
    ]);
  });

  test('come from the other frames if one frame is silent, and the silent frame is counted at the end', async () => {
    vi.useFakeTimers();
    frames.set(0, () => words('top', 'fog'));
    frames.set(1, never);
    frames.set(2, () => words('advert', 'net'));
    frames.set(3, () => null);
    const told = follow();
    await vi.advanceTimersByTimeAsync(1000);
    expect(await told).toEqual([
      [1, 0],
      [2, 0],
      [2, 1],
    ]);
  });

  test('are missing when the page is not shaded', async () => {
    frames.set(0, () => null);
    expect(await follow()).toEqual([]);
    expect(await askWords(1)).toBeNull();
    frames.clear();
    expect(await askWords(1)).toBeNull();
  });

  test('include what the page and any frame reports about itself', async () => {
    frames.set(0, () => ({ ...words('top'), foreign: [{ url: 'b', why: 'sealed' }] }));
    frames.set(1, () => ({ ...words('b'), rows: true, selection: true }));
    frames.set(2, () => ({ ...words('c'), restless: true, fault: 'no text node' }));
    const all = await askWords(1);
    expect(all).toMatchObject({ rows: true, selection: true, restless: true, fault: 'no text node' });
    // A frame that was read after all is not reported as left out.
    expect(all!.foreign).toEqual([]);
  });
});

describe('the place of a word', () => {
  /** Sets up frames with the given numbers of places. Returns a function that gives the frame and place visited last. */
  function withPlaces(counts: readonly (number | null)[]): () => string {
    let reached = '';
    for (const [frame, count] of counts.entries())
      frames.set(frame, ({ given }) => {
        const { n } = given as { n: number };
        if (count !== null && n >= 0 && n < count) reached = `${frame}:${n}`;
        return count;
      });
    return () => reached;
  }

  test.each([
    [0, '0:0'],
    [1, '0:1'],
    [2, '2:0'],
    [4, '2:2'],
    [5, '0:0'],
    [8, '2:1'],
  ])(
    'number %i is counted through the page, then through its frames, and then from the page again',
    async (n, at) => {
      const reached = withPlaces([2, 0, 3]);
      expect(await goToPlace(1, 'fog', n)).toBe(true);
      expect(reached()).toBe(at);
    },
  );

  test('is found even if frames before it do not answer', async () => {
    const reached = withPlaces([1, null, 1]);
    expect(await goToPlace(1, 'fog', 1)).toBe(true);
    expect(reached()).toBe('2:0');
    vi.useFakeTimers();
    frames.set(1, never);
    const going = goToPlace(1, 'fog', 1);
    await vi.advanceTimersByTimeAsync(1000);
    expect(await going).toBe(true);
    expect(reached()).toBe('2:0');
  });

  test('is not found when no frame has the word', async () => {
    withPlaces([0, 0]);
    expect(await goToPlace(1, 'fog', 0)).toBe(false);
  });
});

test('frames are listed in order without the page itself, and answers leave out silent frames', async () => {
  for (const frame of [7, 0, 3]) frames.set(frame, () => (frame === 3 ? null : `from ${frame}`));
  expect(await listInnerFrames(1)).toEqual([3, 7]);
  expect(await askFrames(1, 'stop', undefined as never)).toEqual(['from 0', 'from 7']);
});
