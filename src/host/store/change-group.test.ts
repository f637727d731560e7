import { expect, test } from 'vitest';
import { groupOf } from '../../../tests/fakes/group.ts';
import { changeGroup } from './change-group.ts';

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

test('what is said twice stands once', () => {
  expect(changeGroup(herons, { do: 'by-sight', word: 'boat' }).bySight).toEqual(['boat']);
  expect(changeGroup(herons, { do: 'teach', pattern: 'ai' }).alsoTaught).toEqual(['ai']);
});
