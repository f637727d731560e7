import { statSync } from 'node:fs';
import { isAbsolute, join } from 'node:path';
import { glob } from 'tinyglobby';
import { TEXT_ENDINGS } from './open-text.ts';
import { resolvePath } from './read-file.ts';

/**
 * The files that were meant: a file is itself, a folder all texts in it and below (by their endings), and anything else a
 * pattern (`news/*.txt`). In the order given, those of one folder or pattern by code unit, none twice. What nothing is
 * found for stays, so that reading it says what is wrong.
 */
export async function findTexts(given: readonly string[]): Promise<string[]> {
  const found = await Promise.all(given.map(findOne));
  return [...new Set(found.flat())];
}

async function findOne(path: string): Promise<string[]> {
  const place = statSync(resolvePath(path), { throwIfNoEntry: false });
  if (place && !place.isDirectory()) return [path];
  const files = place
    ? await match(`**/*.{${TEXT_ENDINGS.join(',')}}`, resolvePath(path))
    : await match(path, resolvePath('.'));
  if (files.length === 0) return [path];
  return place ? files.map((file) => join(path, file)) : files;
}

async function match(pattern: string, folder: string): Promise<string[]> {
  const files = await glob(pattern, {
    cwd: folder,
    absolute: isAbsolute(pattern),
    caseSensitiveMatch: false,
    expandDirectories: false,
  });
  return files.sort();
}
