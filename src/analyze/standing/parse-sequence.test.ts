import { expect, test } from 'vitest';
import { parseSequence } from './parse-sequence.ts';

const file = {
  id: 'harbor-steps',
  name: 'Harbor steps',
  source: 'made for this test',
  licence: 'MIT',
  steps: [{ title: 'First', teaches: ['m', 'short-a'], bySight: ['the'] }, { teaches: ['s'] }],
};

test('parseSequence keeps the values of a file and fills in empty lists', () => {
  expect(parseSequence(file)).toEqual({ ...file, steps: [file.steps[0], { teaches: ['s'], bySight: [] }] });
});

test('parseSequence keeps the accent of a sequence', () =>
  expect(parseSequence({ ...file, accent: 'british' }).accent).toBe('british'));

test.each<[unknown, string]>([
  [{ ...file, id: undefined }, 'id: should be a text in quotes, but is missing.'],
  [{ ...file, accent: 'scots' }, 'accent: should be one of american, british'],
  [{ ...file, steps: [] }, 'steps: should be a list [ … ] with at least one step.'],
  [{ ...file, steps: {} }, 'steps: should be a list'],
  [{ ...file, license: 'MIT' }, 'license: there is no key "license". Did you mean "licence"?'],
  [{ ...file, steps: [['m']] }, 'steps[0]: should be an object'],
  [
    { ...file, steps: [{ teach: ['m'] }] },
    'steps[0].teach: there is no key "teach". Did you mean "teaches"?',
  ],
  [
    { ...file, steps: [{ teaches: ['m', 'shorta'] }] },
    'steps[0].teaches[1]: there is no pattern "shorta". Did you mean "short-a"?',
  ],
  [
    { ...file, steps: [{ teaches: ['m'] }, { teaches: ['s', 'm'] }] },
    'steps[1].teaches[1]: "m" is taught in steps[0] already.',
  ],
])('parseSequence rejects %j', (value, message) => {
  expect(() => parseSequence(value)).toThrow(message);
});
