import { describe, expect, test } from 'vitest';
import { groupOf } from '../../../tests/fakes/group.ts';
import { changeGroup, countAs, countedAs } from './change-group.ts';

const herons = groupOf({ alsoTaught: ['ai'], notYet: ['wh'], bySight: ['boat'], names: ['Bram'] });

test('a word counts as it was said from now on, without the number of its reading', () => {
  expect(changeGroup(herons, { do: 'by-sight', word: 'read#1' }).bySight).toEqual(['boat', 'read']);
  expect(changeGroup(herons, { do: 'name', word: "Wilma's" }).names).toEqual(['Bram', 'Wilma']);
  expect(changeGroup(herons, { do: 'skip', word: 'Brr' }).skip).toEqual(['brr']);
});

test('a pattern is taught, and no longer an exception', () => {
  expect(changeGroup(herons, { do: 'teach', pattern: 'wh' })).toMatchObject({
    alsoTaught: ['ai', 'wh'],
    notYet: [],
  });
});

test('a word or pattern that is added twice is kept once', () => {
  expect(changeGroup(herons, { do: 'by-sight', word: 'boat' }).bySight).toEqual(['boat']);
  expect(changeGroup(herons, { do: 'teach', pattern: 'ai' }).alsoTaught).toEqual(['ai']);
});

describe('a change of the group is taken back', () => {
  test.each(['wh', 'igh'])('for the pattern %s, which is an exception again', (pattern) => {
    const taught = changeGroup(herons, { do: 'teach', pattern });
    const notYet = herons.notYet.includes(pattern);
    expect(changeGroup(taught, { do: 'unteach', pattern, notYet })).toEqual(herons);
  });

  test.each(['by-sight', 'name', 'skip'] as const)('for a word that was made %s', (as) => {
    const said = countAs(herons, 'Quay', as);
    expect(countedAs(said, 'Quay')).toBe(as);
    const back = changeGroup(said, { do: 'judged', word: 'Quay' });
    expect(countedAs(back, 'Quay')).toBe('judged');
    expect(back).toMatchObject({ bySight: herons.bySight, names: herons.names });
  });

  test('so that a word counts as one thing at a time', () => {
    const said = countAs(countAs(herons, 'boat', 'name'), 'boat', 'skip');
    expect(countedAs(said, 'boat')).toBe('skip');
    expect(said.bySight).toEqual([]);
    expect(said.names).toEqual(['Bram']);
  });
});
