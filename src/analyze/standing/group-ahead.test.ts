import { expect, test } from 'vitest';
import { groupAhead } from './group-ahead.ts';
import { parseGroup } from './parse-group.ts';

const group = parseGroup({ name: 'Herons', sequence: 'first-tide', step: 10, notYet: ['ai'] });

test('a group ahead is five steps further and has an empty notYet list', () => {
  expect(groupAhead(group, 40)).toEqual({ ...group, step: 15, notYet: [] });
});

test('a group ahead is at the last step if fewer than five steps are left', () => {
  expect(groupAhead(group, 12).step).toBe(12);
  expect(groupAhead(group, 10).step).toBe(10);
});
