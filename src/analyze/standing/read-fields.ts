import { bitOf } from '../catalogue/names.ts';
import { IRREGULAR } from '../patterns/irregular.ts';
import type { Accent, PatternId } from '../types.ts';
import { GroupError } from './group-error.ts';
import { shorten, unknownName } from './unknown-name.ts';

/**
 * The fields of one JSON object in a checked file. They are the object's own keys only, so `__proto__` is just an
 * unknown key.
 */
export type Fields = ReadonlyMap<string, unknown>;

/** Reads an object and rejects unknown keys. `path` is empty for the file itself. */
export function readFields(value: unknown, path: string, allowed: readonly string[]): Fields {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    throw new GroupError(path, `should be an object { … }, but is ${describe(value)}.`);
  }
  const fields = new Map<string, unknown>(Object.entries(value));
  for (const key of fields.keys()) {
    if (!allowed.includes(key)) {
      throw unknownName(join(path, key), 'key', key, allowed);
    }
  }
  return fields;
}

/** Reads a text that is not blank. */
export function readText(fields: Fields, key: string, path = ''): string {
  const value = fields.get(key);
  if (typeof value === 'string' && value.trim() !== '') return value;
  throw new GroupError(join(path, key), `should be a text in quotes, but is ${describe(value)}.`);
}

/** Reads a list of texts. A missing key gives an empty list. */
export function readTexts(fields: Fields, key: string, path = ''): readonly string[] {
  const value = fields.get(key);
  if (value === undefined) return [];
  if (!Array.isArray(value)) {
    throw new GroupError(join(path, key), `should be a list [ … ], but is ${describe(value)}.`);
  }
  return value.map((item: unknown, i) => {
    if (typeof item === 'string' && item.trim() !== '') return item.trim();
    throw new GroupError(`${join(path, key)}[${i}]`, `should be a text in quotes, but is ${describe(item)}.`);
  });
}

/**
 * Reads a list of words for look-up. Apostrophes become straight and the text becomes NFC, as in word keys. Capitals
 * are kept.
 */
export function readWords(fields: Fields, key: string, path = ''): readonly string[] {
  return readTexts(fields, key, path).map((word) =>
    word.normalize('NFC').replace(/[\u2018\u2019\u02bc]/g, "'"),
  );
}

/**
 * Reads a list of pattern ids, each in the catalogue. `irregular` is rejected, because it names spellings that no
 * pattern covers.
 */
export function readPatterns(fields: Fields, key: string, path = ''): readonly PatternId[] {
  const ids = readTexts(fields, key, path);
  ids.forEach((id, i) => {
    const at = `${join(path, key)}[${i}]`;
    if (id === IRREGULAR) {
      throw new GroupError(
        at,
        'irregular spellings cannot be taught as a pattern; list the words under bySight.',
      );
    }
    if (!bitOf.has(id)) throw unknownName(at, 'pattern', id, bitOf.keys());
  });
  return ids;
}

/** Reads one of a few fixed texts. Returns undefined if the key is missing. */
export function readChoice<T extends string>(
  fields: Fields,
  key: string,
  choices: readonly T[],
  path = '',
): T | undefined {
  const value = fields.get(key);
  if (value === undefined) return undefined;
  const choice = choices.find((name) => name === value);
  if (choice !== undefined) return choice;
  throw new GroupError(join(path, key), `should be one of ${choices.join(', ')}, but is ${describe(value)}.`);
}

/** Reads the accent of a group or a sequence. Returns undefined if none is given. */
export function readAccent(fields: Fields): Accent | undefined {
  return readChoice(fields, 'accent', ['american', 'british']);
}

/** Reads a whole number of at least `least`. Returns undefined if the key is missing. */
export function readWhole(fields: Fields, key: string, least: number, path = ''): number | undefined {
  const value = fields.get(key);
  if (value === undefined) return undefined;
  if (typeof value === 'number' && Number.isInteger(value) && value >= least) return value;
  throw new GroupError(
    join(path, key),
    `should be a whole number from ${least} up, but is ${describe(value)}.`,
  );
}

/** Reads true or false. Returns undefined if the key is missing. */
export function readFlag(fields: Fields, key: string, path = ''): boolean | undefined {
  const value = fields.get(key);
  if (value === undefined || typeof value === 'boolean') return value;
  throw new GroupError(join(path, key), `should be true or false, but is ${describe(value)}.`);
}

function join(path: string, key: string): string {
  return path === '' ? shorten(key) : `${path}.${shorten(key)}`;
}

function describe(value: unknown): string {
  if (value === undefined) return 'missing';
  if (value === null) return 'null';
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object') return 'an object';
  if (typeof value === 'string') return value.trim() === '' ? 'empty' : `"${shorten(value)}"`;
  return String(value);
}
