import { parseGroup, parseSequence } from '../../analyze/index.ts';
import type { Group, Sequence } from '../../analyze/types.ts';
import { say } from '../../wording/say.ts';

/** Groups and sequences that are passed from one browser to another. */
export interface Shared {
  readonly groups: readonly Group[];
  readonly sequences: readonly Sequence[];
}

/** The version of the file's format, stored under its `wordreach` key. profiles/share.schema.json describes the format. */
const VERSION = 1;
/** The maximum length of a file. No school's file is as large: a sequence of 75 steps has 8 kB. */
export const LARGEST_OWN_FILE = 1_000_000;
const KEYS = ['$schema', 'wordreach', 'groups', 'sequences'];

/** A fault in a file, explained to the teacher in a sentence that says what to do. */
export class ShareError extends Error {
  override readonly name = 'ShareError';
}

/**
 * Reads the text of a file in which earlier versions shared groups and sequences, or of a single sequence or group as
 * in profiles/. The whole file is checked before anything is returned. Throws `ShareError`.
 */
export function readShareFile(text: string): Shared {
  if (text.length > LARGEST_OWN_FILE) throw new ShareError(say('host.tooLarge'));
  const value = parseJson(text);
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    throw new ShareError(say('host.otherFile'));
  if (Object.hasOwn(value, 'steps')) return { sequences: [readItem('', value, parseSequence)], groups: [] };
  if (Object.hasOwn(value, 'name')) return { sequences: [], groups: [readItem('', value, parseGroup)] };
  const { wordreach, groups = [], sequences = [] } = value as Record<string, unknown>;
  if (typeof wordreach !== 'number' || wordreach < VERSION) throw new ShareError(say('host.otherFile'));
  if (wordreach > VERSION) {
    throw new ShareError(say('host.newerWordreach'));
  }
  const stray = Object.keys(value).find((key) => !KEYS.includes(key));
  if (stray !== undefined) {
    throw new ShareError(say('host.unknownPart', { part: stray.slice(0, 40) }));
  }
  const shared = {
    sequences: readList('sequences', sequences, parseSequence),
    groups: readList('groups', groups, parseGroup),
  };
  refuseRepeats(shared.sequences);
  if (shared.sequences.length + shared.groups.length === 0) {
    throw new ShareError(say('host.nothingInFile'));
  }
  return shared;
}

function parseJson(text: string): unknown {
  try {
    return JSON.parse(text.replace(/^\ufeff/, ''));
  } catch {
    throw new ShareError(say('host.noJson'));
  }
}

function readList<T>(name: 'groups' | 'sequences', value: unknown, read: (item: unknown) => T): readonly T[] {
  if (!Array.isArray(value))
    throw new ShareError(name === 'groups' ? say('host.groupsNoList') : say('host.sequencesNoList'));
  return value.map((item: unknown, i) => readItem(`${name}[${i}]`, item, read));
}

function readItem<T>(path: string, item: unknown, read: (item: unknown) => T): T {
  try {
    return read(item);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    throw new ShareError(say('host.fileUnusable', { why: `${path && `${path}, `}${why}` }));
  }
}

function refuseRepeats(sequences: readonly Sequence[]): void {
  const ids = sequences.map(({ id }) => id);
  const repeated = ids.find((id, i) => ids.indexOf(id) !== i);
  if (repeated !== undefined) {
    throw new ShareError(say('host.repeatedId', { id: repeated.slice(0, 40) }));
  }
}
