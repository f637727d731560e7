import { expect, test } from 'vitest';
import { markAfter, markBefore, textAfter } from './mark-plan.ts';
import type { Change } from './plan-changes.ts';
import { NO_PLAN, type PlanState } from './plan-state.ts';
import { addProposals, type PossibleChanges } from './possible-changes.ts';

const text = 'Bram quickly ran home. The fog was thick, and the lamp went out.';
const at = (word: string, sentence: number, readable = true) => {
  const from = text.indexOf(word);
  return { from, to: from + word.length, readable, sentence };
};
const bare: PossibleChanges = {
  places: [at('Bram', 0), at('quickly', 0, false), at('ran', 0), at('home', 0), at('lamp', 1, false)],
  changes: [],
  articles: new Map(),
  sentences: [
    { from: 0, to: 22 },
    { from: 23, to: text.length },
  ],
};
const proposals = [
  { sentence: 0, text: 'Bram ran home.', what: 'shorter', isSafe: true },
  { sentence: 1, text: 'The fog was thick. The lamp went out.', what: 'parted' },
  { sentence: 0, text: 'Bram quickly ran home.', what: 'the same' },
];
const count = (part: string) => ({
  words: part.match(/\p{L}+/gu)!.length,
  beyond: part.match(/quickly|lamp/g)?.length ?? 0,
});
const possible = addProposals(bare, text, proposals, count);
const [shorter, parted] = possible.changes as [Change, Change];
const swap: Change = { kind: 'swap', word: 'quickly', swap: 'fast', places: [1] };

function planOf(ticked: readonly Change[], planned: readonly Change[]): PlanState {
  const proposal = { possible, text, planned: planned.map((change) => ({ change, before: 0, after: 0 })) };
  return { ...NO_PLAN, proposal, ticked: new Set(ticked) };
}

test('a proposal becomes a change with its removed and added words, and a proposal without effect is skipped', () => {
  expect(possible.changes).toHaveLength(2);
  expect(shorter).toMatchObject({
    gone: [1],
    comes: { words: 0, unread: 0 },
    longest: { before: 4, after: 3 },
  });
  expect(parted).toMatchObject({ isSafe: false, longest: { before: 9, after: 4 } });
});

test('the text after the plan is the text before with only the ticked changes made', () => {
  expect(textAfter(planOf([shorter, parted], [shorter, parted]))).toBe(
    'Bram ran home. The fog was thick. The lamp went out.',
  );
  expect(textAfter(planOf([], [shorter, parted]))).toBe(text);
  expect(markAfter(planOf([parted], [parted])).filter(({ isNew }) => isNew).length).toBeGreaterThan(0);
});

test('pieces make up the whole text, and overlapping text belongs to the larger change if that is ticked', () => {
  for (const ticked of [[shorter], [swap], []]) {
    const pieces = markBefore(planOf(ticked, [shorter, swap, parted]));
    expect(pieces.map(({ text }) => text).join('')).toBe(text);
    const quickly = pieces.find((piece) => piece.text.includes('quickly'))!;
    expect(quickly.change).toBe(ticked[0] === shorter ? shorter : swap);
  }
});

test('no swap is made in words that a rewritten sentence no longer contains', () => {
  expect(textAfter(planOf([shorter, swap], [swap, shorter]))).toBe(
    'Bram ran home. The fog was thick, and the lamp went out.',
  );
});
