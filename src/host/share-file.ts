import { parseGroup, parseSequence } from '../analyze/index.ts';
import type { Group, Sequence } from '../analyze/types.ts';

/** Groups and sequences on their way between two browsers. */
export interface Shared {
  readonly groups: readonly Group[];
  readonly sequences: readonly Sequence[];
}

/** Version of the file's format, its `wordreach` key; profiles/share.schema.json describes it. */
const VERSION = 1;
/** Larger than any school's: a sequence of 75 steps has 8 kB. */
export const LARGEST_FILE = 1_000_000;
const KEYS = ['$schema', 'wordreach', 'groups', 'sequences'];

/** What is wrong with a file, in a sentence for the teacher that says what to do. */
export class ShareError extends Error {
  override readonly name = 'ShareError';
}

/** The text of a file. The names of pupils and places are left out unless `withNames`. */
export function writeShareFile({ groups, sequences }: Shared, { withNames }: { withNames: boolean }): string {
  const file = {
    wordreach: VERSION,
    sequences,
    groups: groups.map(({ names, ...group }) => (withNames ? { ...group, names } : group)),
  };
  return `${JSON.stringify(file, null, 2)}\n`;
}

/**
 * Reads the text of a file: one that `writeShareFile` wrote, or a single sequence or group as in profiles/. All of it
 * is checked before anything is given. Throws `ShareError`.
 */
export function readShareFile(text: string): Shared {
  if (text.length > LARGEST_FILE) throw new ShareError(TOO_LARGE);
  const value = parseJson(text);
  if (typeof value !== 'object' || value === null || Array.isArray(value)) throw new ShareError(OTHER_FILE);
  if (Object.hasOwn(value, 'steps')) return { sequences: [readItem('', value, parseSequence)], groups: [] };
  if (Object.hasOwn(value, 'name')) return { sequences: [], groups: [readItem('', value, parseGroup)] };
  const { wordreach, groups = [], sequences = [] } = value as Record<string, unknown>;
  if (typeof wordreach !== 'number') throw new ShareError(OTHER_FILE);
  if (wordreach > VERSION) {
    throw new ShareError(
      'This file was written by a newer Wordreach. Update the extension, then open it again.',
    );
  }
  const stray = Object.keys(value).find((key) => !KEYS.includes(key));
  if (stray !== undefined) {
    throw new ShareError(
      `The file has a part Wordreach does not know (“${stray.slice(0, 40)}”). Save it anew where it was made.`,
    );
  }
  const shared = {
    sequences: readList('sequences', sequences, parseSequence),
    groups: readList('groups', groups, parseGroup),
  };
  refuseRepeats(shared.sequences);
  if (shared.sequences.length + shared.groups.length === 0) {
    throw new ShareError('There is no group and no sequence in this file.');
  }
  return shared;
}

/** The sentence for a file that is not even read. */
export const TOO_LARGE =
  'This file is larger than 1 MB, which no Wordreach file is. Choose the file that was saved from this page.';
const OTHER_FILE = 'This is not a Wordreach file. Choose one that was saved from this page.';

function parseJson(text: string): unknown {
  try {
    return JSON.parse(text.replace(/^\ufeff/, ''));
  } catch {
    throw new ShareError(
      'This file is no JSON, or it was cut off. Choose a file that was saved from this page, or save it anew.',
    );
  }
}

function readList<T>(name: string, value: unknown, read: (item: unknown) => T): readonly T[] {
  if (!Array.isArray(value))
    throw new ShareError(`The ${name} in this file are not a list. Save it anew where it was made.`);
  return value.map((item: unknown, i) => readItem(`${name}[${i}]`, item, read));
}

function readItem<T>(path: string, item: unknown, read: (item: unknown) => T): T {
  try {
    return read(item);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    throw new ShareError(`The file cannot be used: ${path && `${path}, `}${why}`);
  }
}

function refuseRepeats(sequences: readonly Sequence[]): void {
  const ids = sequences.map(({ id }) => id);
  const repeated = ids.find((id, i) => ids.indexOf(id) !== i);
  if (repeated !== undefined) {
    throw new ShareError(
      `Two sequences in this file have the id “${repeated.slice(0, 40)}”. Give one of them another id, then open it again.`,
    );
  }
}
