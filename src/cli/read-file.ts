import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { InputError } from './run-command.ts';

/** A path as the caller meant it: npm runs scripts from the package's own folder and says where it was called. */
export function resolvePath(path: string): string {
  return resolve(process.env.INIT_CWD ?? process.cwd(), path);
}

/** The text of a UTF-8 file, or of stdin for `-`. Throws `InputError` when it cannot be read. */
export function readText(path: string): string {
  return readBytes(path)
    .toString('utf8')
    .replace(/^\ufeff/, '');
}

/** What is in a file, or in stdin for `-`. Throws `InputError` when it cannot be read. */
export function readBytes(path: string): Buffer {
  try {
    return readFileSync(path === '-' ? 0 : resolvePath(path));
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? String(error.code) : 'unknown error';
    throw new InputError(`${path}: ${reasons[code] ?? `cannot be read (${code}).`}`);
  }
}

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file; check the path.',
  EISDIR: 'is a folder; give a file.',
  EACCES: 'may not be read; check its permissions.',
};
