import { type Dirent, readdirSync, realpathSync, statSync } from 'node:fs';
import { isAbsolute, join } from 'node:path';
import { glob } from 'tinyglobby';
import { explainReading } from './explain-errno.ts';
import { TEXT_ENDINGS } from './open-text.ts';
import { resolvePath } from './read-file.ts';

/** A file that was meant, or a folder whose texts cannot be had, with a sentence that says why. */
export interface FoundText {
  readonly path: string;
  readonly error: string | null;
}

/**
 * The files that were meant: a file is itself, a folder all texts in it and below (by their endings), and anything else a
 * pattern (`news/*.txt`). In the order given, files of one folder or pattern by code unit, none twice, also where links lead to it again.
 * A path that nothing is found for stays, so that reading it says why.
 */
export async function findTexts(given: readonly string[]): Promise<FoundText[]> {
  return onceEach((await Promise.all(given.map(findOne))).flat());
}

/** The first of those that are in one place. */
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

/** The kind of thing at a path; null where it cannot be known. */
function kindOf(path: string): 'folder' | 'file' | null {
  try {
    return statSync(resolvePath(path)).isDirectory() ? 'folder' : 'file';
  } catch {
    return null;
  }
}

/** Each folder once, and links behind what they may lead to, so that a text has the name of its own place. */
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
  // Only links lead to a file again, and to look where each file is takes most of the time.
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

/** The path of what a path leads to, whatever links it goes through; the path itself where that cannot be known. */
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
