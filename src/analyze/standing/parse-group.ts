import type { Group, GroupOptions } from '../types.ts';
import { GroupError } from './group-error.ts';
import {
  type Fields,
  readChoice,
  readFields,
  readFlag,
  readPatterns,
  readText,
  readWhole,
  readWords,
} from './read-fields.ts';

const keys = ['$schema', 'name', 'sequence', 'step', 'alsoTaught', 'notYet', 'bySight', 'names', 'options'];
const optionKeys = ['schwa', 'shortOMerged', 'blends', 'syllableTypes', 'maxSyllables'];

/**
 * Checks the content of a group file (profiles/README.md has the format) and fills in what may be left out.
 * Throws `GroupError` with the path in the file at the first thing that is wrong. Whether `step` is within
 * the sequence is seen later, by `compileGroup`, which has the sequence.
 */
export function parseGroup(value: unknown): Group {
  const fields = readFields(value, '', keys);
  const name = readText(fields, 'name');
  const sequence = readSequence(fields);
  const step = readWhole(fields, 'step', 0);
  if (sequence !== null && step === undefined) {
    throw new GroupError('step', `is missing: say how many steps of "${sequence}" are taught so far.`);
  }
  return {
    name,
    sequence,
    step: step ?? 0,
    alsoTaught: readPatterns(fields, 'alsoTaught'),
    notYet: readPatterns(fields, 'notYet'),
    bySight: readWords(fields, 'bySight'),
    names: readWords(fields, 'names'),
    options: readOptions(fields),
  };
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
    blends: readChoice(given, 'blends', ['counted', 'free'], 'options'),
    syllableTypes: readChoice(given, 'syllableTypes', ['counted', 'free'], 'options'),
    maxSyllables: readWhole(given, 'maxSyllables', 1, 'options'),
  };
  return Object.fromEntries(Object.entries(options).filter(([, option]) => option !== undefined));
}
