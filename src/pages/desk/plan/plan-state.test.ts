import { describe, expect, test } from 'vitest';
import type { Change } from './plan-changes.ts';
import { isOutdated, makeTicked, NO_PLAN, propose, tick, tickAll } from './plan-state.ts';
import type { PossibleChanges } from './possible-changes.ts';

const text = 'Winding roads go down. The quay is an inlet. Fog came.';
const at = (word: string, sentence: number, readable = false) => {
  const from = text.indexOf(word);
  return { from, to: from + word.length, readable, sentence };
};
const places = [
  at('Winding', 0),
  at('roads', 0, true),
  at('quay', 1),
  at('inlet', 1),
  at('Fog', 2),
  at('came', 2),
];
const bent: Change = { kind: 'swap', word: 'winding', swap: 'bent', places: [0] };
const bay: Change = { kind: 'swap', word: 'inlet', swap: 'bay', places: [3] };
const quay: Change = { kind: 'story-word', word: 'quay', meaning: 'where ships land', places: [2] };
const fog: Change = { kind: 'drop', sentence: 2 };
const article = { from: text.indexOf('an inlet'), to: text.indexOf('an inlet') + 2, text: 'a' };
const possible: PossibleChanges = {
  places,
  changes: [bent, bay, quay, fog],
  articles: new Map([[3, article]]),
  sentences: ['Winding roads go down.', 'The quay is an inlet.', 'Fog came.'].map((sentence) => {
    const from = text.indexOf(sentence);
    return { from, to: from + sentence.length };
  }),
};
const asked = { ...NO_PLAN, target: 100 };
const proposed = propose(asked, text, possible);

/** Returns the text with the edits made, the last edit first. */
function edited(edits: ReturnType<typeof makeTicked>['edits']): string {
  return edits
    .toSorted((a, b) => b.from - a.from)
    .reduce((now, { from, to, text: put }) => now.slice(0, from) + put + now.slice(to), text);
}

describe('a proposal', () => {
  test('begins with safe changes ticked, and forgets an earlier fault and earlier ticks', () => {
    const again = propose({ ...tickAll(proposed), fault: 'no table' }, text, possible);
    expect(again.ticked).toEqual(new Set([bent, bay]));
    expect(again.fault).toBeNull();
  });

  test('deletes a needed sentence only when more deletions were asked for', () => {
    const needed: Change = { kind: 'drop', sentence: 1, isNeeded: true };
    const only = { ...possible, changes: [needed] };
    expect(propose({ ...asked, target: 90 }, text, only).proposal!.planned).toEqual([]);
    expect(propose({ ...asked, target: 90, dropsMore: true }, text, only).proposal!.planned).toHaveLength(1);
  });

  test('has at most as many story words as were asked for', () => {
    const { proposal } = propose({ ...asked, mostStoryWords: 0 }, text, possible);
    expect(proposal!.planned.map(({ change }) => change)).not.toContain(quay);
    expect(proposed.proposal!.planned.map(({ change }) => change)).toContain(quay);
  });

  test('is outdated once the passage has changed, and a plan without a proposal is not outdated', () => {
    expect(isOutdated(proposed, text)).toBe(false);
    expect(isOutdated(proposed, `${text} More.`)).toBe(true);
    expect(isOutdated(NO_PLAN, text)).toBe(false);
  });

  test('deletes at most a fifth of the sentences, or any number when more deletions were asked for', () => {
    const drops = [0, 1, 2].map((sentence): Change => ({ kind: 'drop', sentence }));
    const unread = {
      ...possible,
      places: places.map((place) => ({ ...place, readable: place.sentence === 2 })),
    };
    const dropped = (dropsMore: boolean) =>
      propose({ ...asked, dropsMore }, text, { ...unread, changes: drops }).proposal!.planned.length;
    expect(dropped(false)).toBe(1);
    expect(dropped(true)).toBe(2);
  });
});

describe('the ticked changes', () => {
  test('can be unticked again', () => {
    const back = tick(tick(tick(proposed, bent, true), bay, true), bent, false);
    expect(back.ticked).toEqual(new Set([bay]));
  });

  test('keep the case of swapped words, correct the article before them, and teach story words', () => {
    const ticked = [bent, bay, quay].reduce((plan, change) => tick(plan, change, true), proposed);
    const { edits, storyWords } = makeTicked(ticked);
    expect(edited(edits)).toBe('Bent roads go down. The quay is a bay. Fog came.');
    expect(storyWords).toEqual([{ word: 'quay', meaning: 'where ships land' }]);
  });

  test('remove a sentence and the blank after it without swapping a word in that sentence', () => {
    const first: Change = { kind: 'drop', sentence: 0 };
    const planned = [first, bent].map((change) => ({ change, before: 0, after: 0 }));
    const plan = tickAll({ ...proposed, proposal: { possible, planned, text } });
    expect(edited(makeTicked(plan).edits)).toBe('The quay is an inlet. Fog came.');
  });
});
