import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Change, describeDistance, type PlanWord, planChanges } from './plan-changes.ts';

/**
 * Builds a passage from letters, as in `a B a | B c`. A small letter is a readable word, a capital is an unreadable
 * word, and a bar ends a sentence.
 */
function passage(text: string): { words: PlanWord[]; places(letter: string): number[] } {
  const sentences = text.split('|').map((sentence) => sentence.trim().split(' '));
  const all = sentences.flatMap((sentence, number) =>
    sentence.map((letter) => ({
      letter,
      word: { readable: letter === letter.toLowerCase(), sentence: number },
    })),
  );
  return {
    words: all.map(({ word }) => word),
    places: (wanted) => all.flatMap(({ letter }, i) => (letter === wanted ? [i] : [])),
  };
}

const options = { target: 95, storyWords: 2 };

describe('a plan', () => {
  const { words, places } = passage('a B a a | B a a C | D a');
  const swap: Change = { kind: 'swap', word: 'B', swap: 'b', places: places('B') };
  const teach: Change = { kind: 'story-word', word: 'C', meaning: '', places: places('C') };
  const drop: Change = { kind: 'drop', sentence: 2 };

  test('takes the most helpful change first, and states the reach before and after each change', () => {
    expect(planChanges(words, [drop, teach, swap], { ...options, target: 100 })).toEqual([
      { change: swap, before: 60, after: 80 },
      { change: teach, before: 80, after: 90 },
      { change: drop, before: 90, after: 100 },
    ]);
  });

  test('stops at the target', () => {
    expect(planChanges(words, [drop, teach, swap], { ...options, target: 80 })).toHaveLength(1);
    expect(planChanges(words, [drop, teach, swap], { ...options, target: 60 })).toEqual([]);
  });

  test('proposes no more story words than wanted', () => {
    const kinds = planChanges(words, [drop, teach, swap], { target: 100, storyWords: 0 });
    expect(kinds.map(({ change }) => change.kind)).toEqual(['swap', 'drop']);
  });

  test('prefers the gentler of two changes with the same effect, and never drops the whole text', () => {
    const other: Change = { kind: 'swap', word: 'C', swap: 'c', places: places('C') };
    expect(planChanges(words, [teach, other], options)[0]!.change).toBe(other);
    expect(planChanges([{ readable: false, sentence: 0 }], [{ kind: 'drop', sentence: 0 }], options)).toEqual(
      [],
    );
  });
});

describe('a rewritten sentence', () => {
  const { words } = passage('a B B a | a a a a');
  const rewrite: Change = {
    kind: 'rewrite',
    sentence: 0,
    text: 'a x a',
    what: '',
    isSafe: true,
    gone: [1, 2],
    comes: { words: 1, unread: 0 },
    edits: [],
    longest: { before: 4, after: 3 },
  };

  test('counts with its removed and added words', () => {
    const [step] = planChanges(words, [rewrite], { ...options, target: 100 });
    expect(step).toEqual({ change: rewrite, before: 75, after: 100 });
  });

  test('is planned at most once, and not at all when its sentence is left out', () => {
    const other = { ...rewrite, text: 'a a', comes: { words: 0, unread: 0 } };
    const drop: Change = { kind: 'drop', sentence: 0 };
    expect(planChanges(words, [drop, rewrite, other], { ...options, target: 100 })).toHaveLength(1);
  });

  test('is planned where its sentence is too long, even if the text is readable enough', () => {
    expect(planChanges(words, [rewrite], { target: 60, storyWords: 0 })).toEqual([]);
    expect(planChanges(words, [rewrite], { target: 60, storyWords: 0, longest: 3 })).toHaveLength(1);
    expect(planChanges(words, [rewrite], { target: 60, storyWords: 0, longest: 4 })).toEqual([]);
  });
});

test('every step raises the reach, until the target is reached or no change helps', () => {
  const word = fc.record({ readable: fc.boolean(), sentence: fc.nat(4) });
  fc.assert(
    fc.property(
      fc.array(word, { maxLength: 30, size: 'max' }),
      fc.array(fc.array(fc.nat(29), { maxLength: 4 })),
      (words, sets) => {
        const changes: Change[] = [
          ...sets.map(
            (places, i): Change => ({
              kind: i % 2 ? 'swap' : 'story-word',
              word: String(i),
              swap: 'x',
              meaning: '',
              places: places.filter((place) => place < words.length),
            }),
          ),
          ...[0, 1, 2, 3, 4].map((sentence): Change => ({ kind: 'drop', sentence })),
        ];
        const planned = planChanges(words, changes, options);
        for (const [i, step] of planned.entries()) {
          expect(step.after).toBeGreaterThan(step.before);
          expect(step.before).toBeLessThan(options.target);
          if (i > 0) expect(step.before).toBeCloseTo(planned[i - 1]!.after);
        }
        expect(new Set(planned.map(({ change }) => change)).size).toBe(planned.length);
      },
    ),
    { seed: 20261125 },
  );
});

describe('the distance of a text from its target', () => {
  const { words, places } = passage('a B | a a | a a | a a | a a | C a');
  const swap: Change = { kind: 'swap', word: 'B', swap: 'b', places: places('B') };
  const drops = [0, 1, 2, 3, 4, 5].map((sentence): Change => ({ kind: 'drop', sentence }));

  test('at most a fifth of the sentences is left out, unless more is asked for', () => {
    const { words: hard } = passage('A B | A B | A B | A B | A B | a a');
    expect(planChanges(hard, drops, options)).toHaveLength(2);
    expect(planChanges(hard, drops, { ...options, dropped: 6 })).toHaveLength(5);
  });

  test('a near text needs few changes, and the plan of a text that is too far misses the target', () => {
    const planned = planChanges(words, [swap], options);
    expect(describeDistance(words, planned, 90)).toMatchObject({
      distance: 'near',
      left: 1,
      sentences: 6,
      same: 4,
    });
    expect(describeDistance(words, planned, 100)).toMatchObject({ distance: 'too-far', left: 1 });
    const many = Array.from({ length: 11 }, () => ({ change: drops[5]!, before: 90, after: 100 }));
    expect(describeDistance(words, many, 100)).toMatchObject({ distance: 'some-way', left: 1, dropped: 1 });
  });
});
