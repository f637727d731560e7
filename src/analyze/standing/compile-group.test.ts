import { describe, expect, test } from 'vitest';
import { groupOf } from '../../../tests/fakes/group.ts';
import { catalogue } from '../catalogue/catalogue.ts';
import type { GroupOptions, PatternId, Sequence } from '../types.ts';
import { compileGroup } from './compile-group.ts';
import { hasBit } from './pattern-bits.ts';

const sequence: Sequence = {
  id: 'harbor-steps',
  name: 'Harbor steps',
  source: 'made for this test',
  licence: 'MIT',
  steps: [
    { teaches: ['m', 's', 'short-a'], bySight: ['The'] },
    { teaches: ['short-o', 't'], bySight: ['said'] },
    { teaches: ['ai'], bySight: ['you'] },
  ],
};

const taughtBy = (alsoTaught: readonly PatternId[], options: GroupOptions = {}) => {
  const { taught } = compileGroup(groupOf({ alsoTaught, options }), null);
  return catalogue.map(({ id }) => id).filter((id) => hasBit(taught, id));
};
const inSequence = { sequence: sequence.id, step: 2 };

test('the steps up to the group’s step are taught, and the patterns of that step are fresh', () => {
  const { taught, fresh, bySight, stepOf } = compileGroup(
    groupOf({ ...inSequence, bySight: ['Boat'] }),
    sequence,
  );
  expect(['m', 'short-a', 't'].every((id) => hasBit(taught, id))).toBe(true);
  expect(hasBit(taught, 'ai')).toBe(false);
  expect(['m', 't'].map((id) => hasBit(fresh, id))).toEqual([false, true]);
  expect([...bySight].sort()).toEqual(['boat', 'said', 'the']);
  expect(['m', 'ai', 'wh'].map(stepOf)).toEqual([1, 3, null]);
});

test('a step beyond the sequence is rejected with an error that names the path', () => {
  expect(() => compileGroup(groupOf({ sequence: sequence.id, step: 4 }), sequence)).toThrow(
    'step: is 4, but "harbor-steps" has 3 steps.',
  );
});

test('alsoTaught adds patterns, notYet overrides it, and not-yet patterns are not fresh', () => {
  const group = groupOf({ ...inSequence, alsoTaught: ['ai', 'oa'], notYet: ['oa', 't'] });
  const { taught, fresh } = compileGroup(group, sequence);
  expect(['ai', 'oa', 't'].map((id) => hasBit(taught, id))).toEqual([true, false, false]);
  expect(hasBit(fresh, 't')).toBe(false);
});

test('alsoTeaching teaches one more pattern, even one in notYet', () => {
  const compiled = compileGroup(groupOf({ ...inSequence, notYet: ['t'] }), sequence);
  expect(hasBit(compiled.alsoTeaching('t').taught, 't')).toBe(true);
  expect(hasBit(compiled.taught, 't')).toBe(false);
});

describe('compileGroup options', () => {
  const free = { syllableTypes: 'counted', shortOMerged: false, schwa: 'strict' } as const;

  test('irregular spelling is never taught, even if the group lists it as taught', () => {
    expect(taughtBy(['irregular'], free)).toEqual([]);
  });

  test('with “schwa: flex”, a weak vowel follows from a full pronunciation of its letters, not from an ending', () => {
    expect(taughtBy(['short-a'], { ...free, schwa: 'flex' })).toEqual(['short-a', 'schwa-a']);
    expect(taughtBy(['or'], { ...free, schwa: 'flex' })).toEqual(['or', 'or-weak']);
    expect(taughtBy(['suffix-or'], { ...free, schwa: 'flex' })).toEqual(['suffix-or']);
  });

  test('strict options add no patterns, and the option “schwa: taught” adds every schwa', () => {
    expect(taughtBy(['short-a'], free)).toEqual(['short-a']);
    expect(taughtBy([], { ...free, schwa: 'taught' })).toEqual(
      expect.arrayContaining(['schwa-a', 'weak-e', 'or-weak']),
    );
  });

  test('short o brings the o of dog only if the option merges the two', () => {
    expect(taughtBy(['short-o'], { ...free, shortOMerged: true })).toEqual(['short-o', 'o-aw']);
    expect(taughtBy(['long-o'], { ...free, shortOMerged: true })).toEqual(['long-o']);
    expect(taughtBy(['short-o'], free)).toEqual(['short-o']);
  });

  test('w brings the wh of whale only if the option treats the two as alike', () => {
    expect(taughtBy(['w'], { ...free, wh: 'free' })).toEqual(['w', 'wh']);
    expect(taughtBy(['h'], { ...free, wh: 'free' })).toEqual(['h']);
    expect(taughtBy(['w'], free)).toEqual(['w']);
  });

  test('a by-sight word brings its irregular forms if the option makes them free', () => {
    const knows = (irregularForms: 'counted' | 'free') =>
      [...compileGroup(groupOf({ bySight: ['Go'], options: { irregularForms } }), null).bySight].sort();
    expect(knows('free')).toEqual(['go', 'goes', 'gone', 'went']);
    expect(knows('counted')).toEqual(['go']);
  });

  test('free blends and free syllable types count as taught', () => {
    expect(taughtBy([], { ...free, blends: 'free' })).toEqual(expect.arrayContaining(['start-st', 'end-nd']));
    expect(taughtBy([], { ...free, syllableTypes: 'free' })).toEqual(
      expect.arrayContaining(['type-open', 'type-vce']),
    );
  });

  test('notYet also removes a pattern that follows from an option', () => {
    const { taught } = compileGroup(groupOf({ alsoTaught: ['short-o'], notYet: ['o-aw'] }), null);
    expect(hasBit(taught, 'o-aw')).toBe(false);
  });

  test.each([
    [1, [], [false, false]],
    [2, [], [true, false]],
    [3, [], [true, true]],
    [1, ['syllables-2'], [true, false]],
  ] as const)(
    'a limit of %i syllables with %j also taught decides which long words are taught',
    (maxSyllables, alsoTaught, expected) => {
      const { taught } = compileGroup(groupOf({ alsoTaught, options: { maxSyllables } }), null);
      expect(['syllables-2', 'syllables-3'].map((id) => hasBit(taught, id))).toEqual(expected);
    },
  );
});
