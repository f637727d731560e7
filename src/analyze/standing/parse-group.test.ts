import { describe, expect, test } from 'vitest';
import { GroupError } from './group-error.ts';
import { parseGroup } from './parse-group.ts';

const herons = { name: 'Herons', sequence: 'steady-steps', step: 12 };

test('parseGroup fills in the optional keys that a file leaves out', () => {
  expect(parseGroup({ name: 'Herons' })).toEqual({
    name: 'Herons',
    sequence: null,
    step: 0,
    alsoTaught: [],
    notYet: [],
    bySight: [],
    names: [],
    options: {},
  });
});

test('parseGroup keeps every value of a complete file', () => {
  const file = {
    ...herons,
    alsoTaught: ['ai'],
    notYet: ['wh'],
    bySight: ['boat'],
    names: ['Bram'],
    options: {
      schwa: 'strict',
      shortOMerged: false,
      blends: 'free',
      syllableTypes: 'counted',
      maxSyllables: 2,
    },
    history: [
      { date: '2026-09-07', sequence: null, step: 0 },
      { date: '2026-11-25', sequence: 'steady-steps', step: 12 },
    ],
  };
  expect(parseGroup({ $schema: '../group.schema.json', ...file })).toEqual(file);
});

test('parseGroup sorts the days of a history', () => {
  const days = ['2026-11-25', '2026-09-07', '2026-10-01'];
  const history = days.map((date, step) => ({ date, step }));
  expect(parseGroup({ ...herons, history }).history?.map(({ date }) => date)).toEqual(days.toSorted());
});

test('parseGroup converts curly apostrophes to straight ones, as in word keys', () => {
  expect(parseGroup({ name: 'Herons', bySight: ['don’t'] }).bySight).toEqual(["don't"]);
});

test.each<[unknown, string, string]>([
  [null, '', 'should be an object'],
  [[], '', 'should be an object { … }, but is a list.'],
  ['Herons', '', 'but is "Herons"'],
  [{}, 'name', 'name: should be a text in quotes, but is missing.'],
  [{ name: ' ' }, 'name', 'but is empty'],
  [{ ...herons, bysight: [] }, 'bysight', 'there is no key "bysight". Did you mean "bySight"?'],
  [{ ...herons, xyzzyxyzzy: [] }, 'xyzzyxyzzy', 'there is no key "xyzzyxyzzy".'],
  [JSON.parse('{"name":"Herons","__proto__":{"step":3}}'), '__proto__', 'there is no key'],
  [{ ...herons, constructor: 1 }, 'constructor', 'there is no key'],
  [{ ...herons, sequence: 3 }, 'sequence', 'but is 3'],
  [{ name: 'Herons', sequence: 'steady-steps' }, 'step', 'say how many steps of "steady-steps" are taught'],
  [{ ...herons, step: 1.5 }, 'step', 'should be a whole number from 0 up, but is 1.5.'],
  [{ ...herons, step: -1 }, 'step', 'but is -1'],
  [{ ...herons, step: '12' }, 'step', 'but is "12"'],
  [{ ...herons, alsoTaught: 'ai' }, 'alsoTaught', 'should be a list'],
  [
    { ...herons, alsoTaught: ['ai', 'short-q'] },
    'alsoTaught[1]',
    'there is no pattern "short-q". Did you mean "short-',
  ],
  [{ ...herons, alsoTaught: ['ai', 'constructor'] }, 'alsoTaught[1]', 'there is no pattern'],
  [{ ...herons, alsoTaught: ['irregular'] }, 'alsoTaught[0]', 'list the words under bySight'],
  [{ ...herons, notYet: [7] }, 'notYet[0]', 'should be a text in quotes, but is 7.'],
  [{ ...herons, names: ['Bram', ''] }, 'names[1]', 'but is empty'],
  [{ ...herons, options: [] }, 'options', 'should be an object'],
  [
    { ...herons, options: { schwa: 'loose' } },
    'options.schwa',
    'should be one of taught, flex, strict, but is "loose".',
  ],
  [{ ...herons, options: { blend: 'free' } }, 'options.blend', 'Did you mean "blends"?'],
  [{ ...herons, options: { shortOMerged: 'yes' } }, 'options.shortOMerged', 'should be true or false'],
  [{ ...herons, history: {} }, 'history', 'should be a list'],
  [{ ...herons, history: [{ date: '2026-13-01', step: 1 }] }, 'history[0].date', 'should be a day such as'],
  [{ ...herons, history: [{ date: '2026-11-25' }] }, 'history[0].step', 'is missing'],
  [{ ...herons, options: { maxSyllables: 0 } }, 'options.maxSyllables', 'should be a whole number from 1 up'],
])('parseGroup rejects %j with an error at the path %s', (file, path, problem) => {
  const error = errorOf(() => parseGroup(file));
  expect(error.path).toBe(path);
  expect(error.message).toContain(problem);
  expect(error.message.startsWith(path)).toBe(true);
});

function errorOf(act: () => unknown): GroupError {
  try {
    act();
  } catch (error) {
    if (error instanceof GroupError) return error;
    throw error;
  }
  throw new Error('nothing was refused');
}

describe('the accent of a group', () => {
  test.each(['american', 'british'] as const)('is kept if it is %s', (accent) =>
    expect(parseGroup({ name: 'Herons', accent }).accent).toBe(accent),
  );

  test('is left out if the file of an earlier version has none', () =>
    expect(parseGroup({ name: 'Herons' })).not.toHaveProperty('accent'));

  test('is rejected if it is unknown', () =>
    expect(() => parseGroup({ name: 'Herons', accent: 'scots' })).toThrow(
      /accent: should be one of american, british/,
    ));
});
