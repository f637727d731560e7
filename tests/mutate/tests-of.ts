import { existsSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { globSync } from 'tinyglobby';

/** A test file and the number of imports between it and the code. */
export interface NearTest {
  readonly file: string;
  readonly distance: number;
}

/**
 * Reads the imports of a source tree. Returns a function that lists the test files that run a given file, nearest
 * first.
 */
export function createTestFinder(root: string): (file: string) => NearTest[] {
  const files = globSync(['src/**/*.{ts,tsx}', 'tests/**/*.ts', 'entrypoints/**/*.{ts,tsx}'], { cwd: root });
  const importers = new Map<string, Set<string>>();
  for (const file of files) {
    for (const to of namedIn(root, file)) {
      if (!importers.has(to)) importers.set(to, new Set());
      importers.get(to)!.add(file);
    }
  }
  return (file) => {
    const distances = new Map([[file, 0]]);
    for (const [at, distance] of distances)
      for (const next of importers.get(at) ?? []) if (!distances.has(next)) distances.set(next, distance + 1);
    return [...distances]
      .filter(([file]) => /\.(?:test|spec)\.tsx?$/.test(file))
      .map(([file, distance]) => ({ file, distance }))
      .sort((a, b) => a.distance - b.distance || a.file.localeCompare(b.file));
  };
}

/** Returns our own files that a file names in an import or as the entry of a bundle. */
function namedIn(root: string, file: string): string[] {
  const text = readFileSync(join(root, file), 'utf8');
  const named = [
    ...text.matchAll(/['"](\.{1,2}\/[^'"\n]+)['"]/g),
    ...text.matchAll(/new URL\('([^'\n]+)', import\.meta\.url\)/g),
  ];
  return named
    .map(([, path]) => relative(root, join(root, dirname(file), path!.replace(/\?.*/, ''))))
    .filter((path) => existsSync(join(root, path)) && /\.\w+$/.test(path));
}
