import { describe, expect, test } from 'vitest';
import { groupOf } from '../../../tests/fakes/group.ts';
import { changeGroup, countAs, countedAs } from './change-group.ts';

const herons = groupOf({ alsoTaught: ['ai'], notYet: ['wh'], bySight: ['boat'], names: ['Bram'] });

test('a word is added to the list that the teacher chose, without the number of its reading', () => {
  expect(changeGroup(herons, { do: 'by-sight', word: 'read#1' }).bySight).toEqual(['boat', 'read']);
  expect(changeGroup(herons, { do: 'name', word: "Wilma's" }).names).toEqual(['Bram', 'Wilma']);
  expect(changeGroup(herons, { do: 'skip', word: 'Brr' }).skip).toEqual(['brr']);
});

test('a pattern that becomes taught is no longer an exception', () => {
  expect(changeGroup(herons, { do: 'teach', pattern: 'wh' })).toMatchObject({
    alsoTaught: ['ai', 'wh'],
    notYet: [],
  });
});

test('a word or pattern that is added twice is kept once', () => {
  expect(changeGroup(herons, { do: 'by-sight', word: 'boat' }).bySight).toEqual(['boat']);
  expect(changeGroup(herons, { do: 'teach', pattern: 'ai' }).alsoTaught).toEqual(['ai']);
});

describe('taking back or replacing a change of the group', () => {
  test.each(['wh', 'igh'])('restores the group after the pattern %s was marked as taught', (pattern) => {
    const taught = changeGroup(herons, { do: 'teach', pattern });
    const notYet = herons.notYet.includes(pattern);
    expect(changeGroup(taught, { do: 'unteach', pattern, notYet })).toEqual(herons);
  });

  test.each(['by-sight', 'name', 'skip'] as const)('restores the group after a word was made %s', (as) => {
    const said = countAs(herons, 'Quay', as);
    expect(countedAs(said, 'Quay')).toBe(as);
    const back = changeGroup(said, { do: 'judged', word: 'Quay' });
    expect(countedAs(back, 'Quay')).toBe('judged');
    expect(back).toMatchObject({ bySight: herons.bySight, names: herons.names });
  });

  test('leaves a word counted only in the way chosen last', () => {
    const said = countAs(countAs(herons, 'boat', 'name'), 'boat', 'skip');
    expect(countedAs(said, 'boat')).toBe('skip');
    expect(said.bySight).toEqual([]);
    expect(said.names).toEqual(['Bram']);
  });
});
