import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { decodeText } from '../passage/files/decode-text.ts';
import { explainReading } from './explain-errno.ts';
import { InputError } from './run-command.ts';

/**
 * Resolves a path against the folder of the caller. npm runs scripts in the package folder and passes the caller's
 * folder in a variable.
 */
export function resolvePath(path: string): string {
  return resolve(process.env.INIT_CWD ?? process.cwd(), path);
}

/**
 * Returns the text of a file in UTF-8 or UTF-16, or of stdin for `-`, without a byte order mark. Throws `InputError` if
 * it cannot be read.
 */
export function readText(path: string): string {
  return decodeText(readBytes(path));
}

/** Returns the content of a file, or of stdin for `-`. Throws `InputError` if it cannot be read. */
export function readBytes(path: string): Buffer {
  try {
    return readFileSync(path === '-' ? 0 : resolvePath(path));
  } catch (error) {
    throw new InputError(`${path}: ${explainReading(error)}`);
  }
}
