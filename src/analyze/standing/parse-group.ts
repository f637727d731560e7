import type { Group, GroupOptions, StepMove } from '../types.ts';
import { GroupError } from './group-error.ts';
import {
  type Fields,
  readAccent,
  readChoice,
  readFields,
  readFlag,
  readPatterns,
  readText,
  readWhole,
  readWords,
} from './read-fields.ts';

const keys = [
  ...['$schema', 'name', 'accent', 'sequence', 'step', 'alsoTaught', 'notYet', 'bySight', 'names', 'options'],
  ...['skip', 'history'],
];
const optionKeys = [
  ...['schwa', 'shortOMerged', 'wh', 'blends', 'syllableTypes', 'irregularForms'],
  ...['divisions', 'endings', 'bath', 'soundMarks', 'maxSyllables'],
];
const COUNTED = ['counted', 'free'] as const;

/**
 * Checks the content of a group file (profiles/README.md has the format) and fills in optional values. Throws
 * `GroupError` with the path in the file at the first error. `compileGroup` has the sequence, so it checks later
 * whether `step` is within the sequence.
 */
export function parseGroup(value: unknown): Group {
  const fields = readFields(value, '', keys);
  const name = readText(fields, 'name');
  const sequence = readSequence(fields);
  const accent = readAccent(fields);
  const step = readWhole(fields, 'step', 0);
  if (sequence !== null && step === undefined) {
    throw new GroupError('step', `is missing: say how many steps of "${sequence}" are taught so far.`);
  }
  return {
    name,
    ...(accent && { accent }),
    sequence,
    step: step ?? 0,
    alsoTaught: readPatterns(fields, 'alsoTaught'),
    notYet: readPatterns(fields, 'notYet'),
    bySight: readWords(fields, 'bySight'),
    names: readWords(fields, 'names'),
    ...(fields.has('skip') ? { skip: readWords(fields, 'skip') } : {}),
    options: readOptions(fields),
    ...(fields.has('history') ? { history: readHistory(fields.get('history')) } : {}),
  };
}

const DAY = /^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/;

function readHistory(value: unknown): readonly StepMove[] {
  if (!Array.isArray(value)) throw new GroupError('history', 'should be a list [ … ] of dated steps.');
  const moves = value.map((item: unknown, i) => {
    const path = `history[${i}]`;
    const fields = readFields(item, path, ['date', 'sequence', 'step']);
    const date = readText(fields, 'date', path);
    if (!DAY.test(date)) throw new GroupError(`${path}.date`, 'should be a day such as "2026-11-25".');
    const step = readWhole(fields, 'step', 0, path);
    if (step === undefined)
      throw new GroupError(`${path}.step`, 'is missing: say how many steps were taught.');
    const sequence = fields.get('sequence') ?? null;
    return { date, sequence: sequence === null ? null : readText(fields, 'sequence', path), step };
  });
  return moves.toSorted((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
}

function readSequence(fields: Fields): string | null {
  const value = fields.get('sequence');
  return value === undefined || value === null ? null : readText(fields, 'sequence');
}

function readOptions(fields: Fields): GroupOptions {
  const value = fields.get('options');
  if (value === undefined) return {};
  const given = readFields(value, 'options', optionKeys);
  const options = {
    schwa: readChoice(given, 'schwa', ['taught', 'flex', 'strict'], 'options'),
    shortOMerged: readFlag(given, 'shortOMerged', 'options'),
    wh: readChoice(given, 'wh', COUNTED, 'options'),
    blends: readChoice(given, 'blends', COUNTED, 'options'),
    syllableTypes: readChoice(given, 'syllableTypes', COUNTED, 'options'),
    irregularForms: readChoice(given, 'irregularForms', COUNTED, 'options'),
    divisions: readChoice(given, 'divisions', COUNTED, 'options'),
    endings: readChoice(given, 'endings', ['parts', 'units'], 'options'),
    bath: readChoice(given, 'bath', ['father', 'cat'], 'options'),
    soundMarks: readChoice(given, 'soundMarks', ['dictionary', 'ipa'], 'options'),
    maxSyllables: readWhole(given, 'maxSyllables', 1, 'options'),
  };
  return Object.fromEntries(Object.entries(options).filter(([, option]) => option !== undefined));
}
