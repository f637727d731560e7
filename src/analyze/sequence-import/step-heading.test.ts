import { expect, test } from 'vitest';
import { readStepHeading } from './step-heading.ts';

test.each([
  ['Week 3: sh, ch', 'Week 3', 'week', 'sh, ch'],
  ['Autumn 1, Week 2', 'Autumn 1, Week 2', 'week', ''],
  ['Week of 9 March: ai', 'Week of 9 March', 'week', 'ai'],
  ['Kindergarten Unit 2: Digraphs', 'Kindergarten Unit 2', 'unit', 'Digraphs'],
  ['Fall Week 3: sh', 'Fall Week 3', 'week', 'sh'],
  ['4. sh', '4', 'number', 'sh'],
  ['May', 'May', 'month', ''],
  ['May: oa', 'May', 'month', 'oa'],
])('%j begins a step', (line, title, kind, rest) => {
  expect(readStepHeading(line)).toEqual({ title, kind, rest });
});

test.each(['May we go?', 'Set a place', 'Group a few', 'sh, ch', '4 sh'])(
  '%j does not begin a step',
  (line) => {
    expect(readStepHeading(line)).toBeNull();
  },
);
