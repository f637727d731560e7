import { expect, test } from 'vitest';
import { groupAhead } from './group-ahead.ts';
import { parseGroup } from './parse-group.ts';

const group = parseGroup({ name: 'Herons', sequence: 'first-tide', step: 10, notYet: ['ai'] });

test('a group ahead is five steps on and has nothing that is not secure', () => {
  expect(groupAhead(group, 40)).toEqual({ ...group, step: 15, notYet: [] });
});

test('a group ahead is at the last step where fewer than five are left', () => {
  expect(groupAhead(group, 12).step).toBe(12);
  expect(groupAhead(group, 10).step).toBe(10);
});
