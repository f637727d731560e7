import { existsSync, readdirSync } from 'node:fs';
import { basename, dirname, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import {
  type CompiledGroup,
  compileGroup,
  GroupError,
  parseGroup,
  parseSequence,
  unknownName,
} from '../analyze/index.ts';
import type { Group, Sequence } from '../analyze/types.ts';
import { readText, resolvePath } from './read-file.ts';
import { InputError } from './run-command.ts';

/** A group file with its sequence, ready for judging. */
export interface LoadedGroup {
  readonly group: Group;
  readonly sequence: Sequence | null;
  readonly compiled: CompiledGroup;
}

/**
 * Reads a group file and its sequence. The sequence is the id of a starter, or a path relative to the group file
 * (anything with a slash or ending in .json). Throws `InputError` with the file and the wrong place in it.
 */
export function loadGroup(path: string): LoadedGroup {
  const group = within(path, () => parseGroup(readJson(path)));
  const file = within(path, () => findSequence(group.sequence, path));
  const sequence = file === null ? null : within(file, () => parseSequence(readJson(file)));
  const compiled = within(path, () => compileGroup(group, sequence));
  return { group, sequence, compiled };
}

function findSequence(name: string | null, groupPath: string): string | null {
  if (name === null) return null;
  if (/[\\/]|\.json$/.test(name)) {
    const file = resolve(dirname(resolvePath(groupPath)), name);
    if (existsSync(file)) return file;
    throw new GroupError('sequence', `there is no file "${name}", seen from the group file.`);
  }
  const starters = fileURLToPath(new URL('../../profiles/sequences/', import.meta.url));
  const ids = readdirSync(starters).map((file) => basename(file, '.json'));
  if (!ids.includes(name)) throw unknownName('sequence', 'sequence', name, ids);
  return resolve(starters, `${name}.json`);
}

/** Runs `act` and puts the file name before the message of a fault. */
function within<T>(file: string, act: () => T): T {
  try {
    return act();
  } catch (error) {
    if (error instanceof GroupError) throw new InputError(`${file}: ${error.message}`);
    throw error;
  }
}

/** Returns the parsed content of a JSON file. Throws `InputError` with line and column if the file is not JSON. */
function readJson(path: string): unknown {
  const text = readText(path);
  try {
    return JSON.parse(text);
  } catch (error) {
    const problem = error instanceof Error ? error.message : String(error);
    const short = problem
      .replace(/,? in JSON at position \d+.*$/s, '')
      .replace(/, .* is not valid JSON$/s, '');
    throw new InputError(`${path}${placeOf(problem, text)}: this is not valid JSON: ${short}.`);
  }
}

/** Returns `:3:7` (line and column) from the offset in a V8 message. Empty if the message has no offset. */
function placeOf(problem: string, text: string): string {
  const offset = /position (\d+)/.exec(problem)?.[1];
  if (offset === undefined) return '';
  const lines = text.slice(0, Number(offset)).split('\n');
  return `:${lines.length}:${lines.at(-1)!.length + 1}`;
}
