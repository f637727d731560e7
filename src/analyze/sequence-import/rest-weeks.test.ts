import { expect, test } from 'vitest';
import { importSequence } from './import-sequence.ts';

test.each([
  'A star means a test on Friday',
  'Sounds go between slashes',
  'HF = high-frequency words',
  'R. Alder',
  'Set up word boxes',
  'Print the word wall',
  'Introduce partner reading routines',
  'Fall placement and goal setting',
  'Fall review of short vowels - skip if they passed',
  'End of year grade 1 assessment - nonsense words and one timed passage',
])('“%s” teaches nothing', (line) => {
  const [item] = importSequence(`Week 1: sh\nWeek 2: ch\n${line}`).steps.at(-1)!.items.slice(-1);
  expect(item).toMatchObject({ text: line, status: 'ignored' });
});
