import { type Dirent, readdirSync, realpathSync, statSync } from 'node:fs';
import { isAbsolute, join } from 'node:path';
import { glob } from 'tinyglobby';
import { explainReading } from './explain-errno.ts';
import { TEXT_ENDINGS } from './open-text.ts';
import { resolvePath } from './read-file.ts';

/**
 * A file that was found, or a folder whose texts cannot be read. For such a folder, `error` is a sentence that gives
 * the reason.
 */
export interface FoundText {
  readonly path: string;
  readonly error: string | null;
}

/**
 * Returns the files for the given paths. A file path gives the file itself. A folder gives all texts in it and its
 * subfolders, chosen by their endings. Anything else is a pattern (`news/*.txt`).
 * The order is as given. Files of one folder or pattern are sorted by code unit. No file appears twice, even if links
 * lead to it again. A path that matches nothing stays in the list, so that reading it reports the reason.
 */
export async function findTexts(given: readonly string[]): Promise<FoundText[]> {
  return onceEach((await Promise.all(given.map(findOne))).flat());
}

/** Keeps only the first of several paths to the same place. */
function onceEach(found: readonly FoundText[]): FoundText[] {
  const places = new Set<string>();
  return found.filter(({ path }) => {
    const place = placeOf(path);
    const isNew = !places.has(place);
    places.add(place);
    return isNew;
  });
}

async function findOne(path: string): Promise<FoundText[]> {
  if (path === '-') return [text(path)];
  const kind = kindOf(path);
  if (kind === 'folder') {
    const files = listFolder(path);
    return files.length > 0 ? files : [{ path, error: NO_TEXTS }];
  }
  const files = kind === 'file' ? [] : await match(path);
  return files.length > 0 ? files.map(text) : [text(path)];
}

const NO_TEXTS = `there is no text in this folder; give one with files of ${TEXT_ENDINGS.join(', ')}.`;
const ENDING = new RegExp(`\\.(?:${TEXT_ENDINGS.join('|')})$`, 'i');

function text(path: string): FoundText {
  return { path, error: null };
}

/** Returns whether a path leads to a folder or a file, or null if this cannot be known. */
function kindOf(path: string): 'folder' | 'file' | null {
  try {
    return statSync(resolvePath(path)).isDirectory() ? 'folder' : 'file';
  } catch {
    return null;
  }
}

/**
 * Lists the texts in a folder, entering each folder once. Links come after real files, so that a text has the path of
 * its real location.
 */
function listFolder(path: string): FoundText[] {
  const found: FoundText[] = [];
  const entered = new Set<string>();
  let folders = [path];
  let links: string[] = [];
  let anyLink = false;
  while (folders.length > 0) {
    const folder = folders.shift()!;
    const place = placeOf(folder);
    if (!entered.has(place)) {
      entered.add(place);
      for (const entry of read(folder)) {
        const inside = join(folder, entry.name);
        if (entry.isDirectory()) folders.push(inside);
        else if (entry.isSymbolicLink()) {
          anyLink = true;
          links.push(inside);
        } else if (ENDING.test(entry.name)) found.push(text(inside));
      }
    }
    if (folders.length > 0) continue;
    for (const link of links) if (kindOf(link) !== 'folder' && ENDING.test(link)) found.push(text(link));
    folders = links.filter((link) => kindOf(link) === 'folder');
    links = [];
  }
  // Only links can lead to a file twice. Without links the check is skipped, because looking up the real place of each
  // file takes most of the time.
  const once = anyLink ? onceEach(found) : found;
  return once.sort((a, b) => (a.path < b.path ? -1 : 1));

  function read(folder: string): Dirent[] {
    try {
      return readdirSync(resolvePath(folder), { withFileTypes: true });
    } catch (error) {
      found.push({ path: folder, error: explainReading(error) });
      return [];
    }
  }
}

/** Returns the real path after resolving all links. Returns the path itself if it cannot be resolved. */
function placeOf(path: string): string {
  const whole = resolvePath(path);
  try {
    return path === '-' ? path : realpathSync.native(whole);
  } catch {
    return whole;
  }
}

async function match(pattern: string): Promise<string[]> {
  try {
    const files = await glob(pattern, {
      cwd: resolvePath('.'),
      absolute: isAbsolute(pattern),
      caseSensitiveMatch: false,
      expandDirectories: false,
    });
    return files.sort();
  } catch {
    return [];
  }
}
