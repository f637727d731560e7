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

test('steps up to the group’s are taught, the last is fresh', () => {
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

test('a step beyond the sequence is refused with the path', () => {
  expect(() => compileGroup(groupOf({ sequence: sequence.id, step: 4 }), sequence)).toThrow(
    'step: is 4, but "harbor-steps" has 3 steps.',
  );
});

test('alsoTaught adds, notYet has the last word, and not-yet patterns are not fresh', () => {
  const group = groupOf({ ...inSequence, alsoTaught: ['ai', 'oa'], notYet: ['oa', 't'] });
  const { taught, fresh } = compileGroup(group, sequence);
  expect(['ai', 'oa', 't'].map((id) => hasBit(taught, id))).toEqual([true, false, false]);
  expect(hasBit(fresh, 't')).toBe(false);
});

test('alsoTeaching teaches one more, even one that was not yet', () => {
  const compiled = compileGroup(groupOf({ ...inSequence, notYet: ['t'] }), sequence);
  expect(hasBit(compiled.alsoTeaching('t').taught, 't')).toBe(true);
  expect(hasBit(compiled.taught, 't')).toBe(false);
});

describe('options', () => {
  const free = { syllableTypes: 'counted', shortOMerged: false, schwa: 'strict' } as const;

  test('irregular spelling is never taught, whatever the group says', () => {
    expect(taughtBy(['irregular'], free)).toEqual([]);
  });

  test('flex: a weak vowel follows from a full reading of its letters, not from an ending', () => {
    expect(taughtBy(['short-a'], { ...free, schwa: 'flex' })).toEqual(['short-a', 'schwa-a']);
    expect(taughtBy(['or'], { ...free, schwa: 'flex' })).toEqual(['or', 'or-weak']);
    expect(taughtBy(['suffix-or'], { ...free, schwa: 'flex' })).toEqual(['suffix-or']);
  });

  test('free options teach nothing, and the option “schwa: taught” teaches every schwa', () => {
    expect(taughtBy(['short-a'], free)).toEqual(['short-a']);
    expect(taughtBy([], { ...free, schwa: 'taught' })).toEqual(
      expect.arrayContaining(['schwa-a', 'weak-e', 'or-weak']),
    );
  });

  test('short o brings the o of dog when they count as one, and only then', () => {
    expect(taughtBy(['short-o'], { ...free, shortOMerged: true })).toEqual(['short-o', 'o-aw']);
    expect(taughtBy(['long-o'], { ...free, shortOMerged: true })).toEqual(['long-o']);
    expect(taughtBy(['short-o'], free)).toEqual(['short-o']);
  });

  test('w brings the wh of whale where they sound alike, and only then', () => {
    expect(taughtBy(['w'], { ...free, wh: 'free' })).toEqual(['w', 'wh']);
    expect(taughtBy(['h'], { ...free, wh: 'free' })).toEqual(['h']);
    expect(taughtBy(['w'], free)).toEqual(['w']);
  });

  test('irregular forms come with a by-sight word where the options say so', () => {
    const knows = (irregularForms: 'counted' | 'free') =>
      [...compileGroup(groupOf({ bySight: ['Go'], options: { irregularForms } }), null).bySight].sort();
    expect(knows('free')).toEqual(['go', 'goes', 'gone', 'went']);
    expect(knows('counted')).toEqual(['go']);
  });

  test('blends and syllable types are counted or free', () => {
    expect(taughtBy([], { ...free, blends: 'free' })).toEqual(expect.arrayContaining(['start-st', 'end-nd']));
    expect(taughtBy([], { ...free, syllableTypes: 'free' })).toEqual(
      expect.arrayContaining(['type-open', 'type-vce']),
    );
  });

  test('notYet also takes away what follows', () => {
    const { taught } = compileGroup(groupOf({ alsoTaught: ['short-o'], notYet: ['o-aw'] }), null);
    expect(hasBit(taught, 'o-aw')).toBe(false);
  });

  test.each([
    [1, [], [false, false]],
    [2, [], [true, false]],
    [3, [], [true, true]],
    [1, ['syllables-2'], [true, false]],
  ] as const)('at most %i syllables, also taught %j', (maxSyllables, alsoTaught, expected) => {
    const { taught } = compileGroup(groupOf({ alsoTaught, options: { maxSyllables } }), null);
    expect(['syllables-2', 'syllables-3'].map((id) => hasBit(taught, id))).toEqual(expected);
  });
});
