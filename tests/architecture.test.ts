import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';

/**
 * The allowed imports between parts of the code, checked against the import statements of every file. Dependencies go
 * one way only: page text -> tokens -> word analysis -> standing -> overlay, panel, desk.
 */
const mayImport: Readonly<Record<string, readonly string[]>> = {
  analyze: [],
  contract: ['analyze'],
  marks: ['analyze'],
  wording: [],
  picture: [],
  ui: ['wording', 'analyze', 'marks'],
  swap: ['analyze', 'variety'],
  variety: ['analyze'],
  shorten: ['swap'],
  lesson: ['analyze', 'swap', 'variety', 'marks'],
  rewrite: ['analyze'],
  overlay: ['wording', 'analyze', 'contract', 'ui'],
  'overlay/card': ['wording', 'analyze', 'contract', 'marks', 'ui'],
  'overlay/page': ['wording', 'analyze', 'contract', 'ui', 'overlay', 'overlay/card'],
  'passage/kept': [],
  host: ['wording', 'analyze', 'contract', 'swap', 'lesson', 'passage/kept'],
  passage: ['wording', 'analyze', 'contract', 'host', 'passage/kept'],
  'passage/files': ['wording', 'analyze', 'contract', 'ui', 'host', 'passage', 'picture'],
  'passage/print': ['wording', 'analyze', 'marks', 'ui', 'host', 'passage', 'passage/kept'],
  'pages/help': ['wording', 'ui', 'host'],
  'pages/privacy': ['wording', 'ui'],
  'pages/welcome': ['wording', 'analyze', 'ui', 'host'],
  'pages/card': ['wording', 'analyze', 'contract', 'ui', 'overlay/card'],
  'pages/practice': ['wording', 'contract', 'ui', 'host', 'overlay', 'overlay/card', 'overlay/page'],
  'pages/pdf': [
    'wording',
    'contract',
    'ui',
    'host',
    'overlay',
    'passage',
    'passage/files',
    'picture',
    'pages/practice',
  ],
  'pages/panel': [
    'wording',
    'analyze',
    'contract',
    'marks',
    'ui',
    'host',
    'passage',
    'passage/files',
    'pages/shelf',
  ],
  'pages/files': ['wording', 'ui', 'host'],
  'pages/groups': ['wording', 'analyze', 'marks', 'ui', 'host', 'pages/files'],
  'pages/picture': ['wording', 'analyze', 'picture', 'ui', 'host', 'passage', 'passage/files', 'pages/shelf'],
  'pages/desk': [
    'wording',
    'analyze',
    'marks',
    'swap',
    'variety',
    'lesson',
    'rewrite',
    'shorten',
    'ui',
    'host',
    'passage',
    'passage/files',
    'passage/kept',
    'passage/print',
    'pages/files',
    'pages/picture',
  ],
  'pages/report': ['wording', 'analyze', 'marks', 'ui', 'host', 'passage', 'passage/files', 'passage/print'],
  'pages/shelf': [
    'wording',
    'analyze',
    'variety',
    'ui',
    'host',
    'passage',
    'passage/files',
    'pages/files',
    'pages/report',
  ],
  'pages/lesson': [
    'wording',
    'analyze',
    'marks',
    'lesson',
    'ui',
    'host',
    'passage',
    'passage/kept',
    'passage/print',
  ],
  data: ['analyze', 'swap', 'variety', 'lesson'],
  cli: ['wording', 'analyze', 'swap', 'lesson', 'passage/files'],
  tools: ['wording', 'analyze', 'cli'],
};

const root = fileURLToPath(new URL('..', import.meta.url));
const sources = [...filesIn('src'), ...filesIn('entrypoints')];
const production = sources.filter((file) => !/\.test\.tsx?$/.test(file));
const imports = new Map(sources.map((file) => [file, importsOf(file)]));

test('the engine and its imports are among the files that are checked', () => {
  expect(sources).toContain('src/analyze/index.ts');
  expect(imports.get('src/analyze/index.ts')).toContain('src/analyze/standing/judge.ts');
});

describe.each(Object.keys(mayImport))('src/%s', (folder) => {
  test('imports only the folders that its row in mayImport names', () => {
    const strays = strayImports(folder, (to) => to.startsWith('src/') || to.startsWith('entrypoints/'));
    expect(
      strays,
      `src/${folder} may import: ${mayImport[folder]!.join(', ') || 'nothing outside itself'}`,
    ).toEqual([]);
  });
});

test('every folder of src has a row in mayImport', () => {
  const strays = sources.filter((file) => file.startsWith('src/') && folderOf(file) === undefined);
  expect(strays, 'name their folder in `mayImport` of this test').toEqual([]);
});

test('DEVELOPERS.md lists the same allowed imports as mayImport', () => {
  const rows = [...read('DEVELOPERS.md').matchAll(/^\| `src\/([\w/-]+)` \| .* \| (.*) \|$/gm)];
  const told = rows.map(([, folder, may]) => [folder!, may === 'nothing' ? [] : may!.split(', ').sort()]);
  const held = Object.entries(mayImport).map(([folder, may]) => [folder, [...may].sort()]);
  expect(Object.fromEntries(told), 'its table of folders says what each may import').toEqual(
    Object.fromEntries(held),
  );
});

/** Packages the engine may use: pure functions of a word that do not load data of their own. */
const enginePackages = ['syllable'];

test('the engine imports no Node module, no browser module and only the packages of enginePackages', () => {
  const strays = strayImports('analyze', (to) => !to.startsWith('src/') && !enginePackages.includes(to));
  expect(strays).toEqual([]);
});

test('only host and entrypoints use the extension API directly', () => {
  const strays = production.filter((file) => {
    // launch-extension talks to a running background from outside, as a browser test does.
    if (/^(entrypoints|src\/host)\/|^src\/tools\/launch-extension/.test(file)) return false;
    const reaches = imports.get(file)!.some((to) => /^(webextension-polyfill|wxt|#imports)/.test(to));
    return (
      reaches || /\b(chrome|browser)\.(runtime|storage|tabs|scripting|action|sidePanel)\b/.test(read(file))
    );
  });
  expect(strays, 'ask through src/host instead').toEqual([]);
});

test('only data, cli and tools use Node modules', () => {
  const strays = production.filter(
    (file) =>
      !/^src\/(data|cli|tools)\//.test(file) &&
      imports.get(file)!.some((to) => /^(node:|happy-dom)/.test(to)),
  );
  expect(strays).toEqual([]);
});

test('only the data build imports parts of the engine other than index.ts and types.ts', () => {
  const doors = new Set(['src/analyze/index.ts', 'src/analyze/types.ts']);
  const strays = production
    .filter((file) => !/^src\/(analyze|data)\//.test(file))
    .flatMap((file) => imports.get(file)!.map((to) => ({ file, to })))
    .filter(({ to }) => to.startsWith('src/analyze/') && !doors.has(to))
    .map(({ file, to }) => `${file} -> ${to}`);
  expect(strays, 'export what is needed from src/analyze/index.ts').toEqual([]);
});

test('imports never form a cycle', () => {
  const circle = findCircle(new Map(production.map((file) => [file, imports.get(file)!])));
  expect(circle.join(' -> '), 'move what both need into a file of its own').toBe('');
});

test('file names are in kebab-case, component names in Pascal case', () => {
  const odd = sources.filter(
    (file) => !/\/([a-z0-9]+([.-][a-z0-9]+)*|[A-Z][A-Za-z0-9]*(\.test)?)\.tsx?$/.test(file),
  );
  expect(odd).toEqual([]);
});

test('an import cycle is found if there is one', () => {
  const graph = new Map([
    ['a', ['b', 'c']],
    ['b', []],
    ['c', ['d']],
    ['d', ['a']],
  ]);
  expect(findCircle(graph)).toEqual(['a', 'c', 'd', 'a']);
  expect(findCircle(new Map([['a', ['b']]]))).toEqual([]);
});

test('no browser test waits for an async function in the page', () => {
  // Playwright treats the returned promise as a true value. It waits for the promise once, but not until its value is
  // true.
  const waiting = filesIn('tests').filter((file) => /waitForFunction\(\s*async\b/.test(read(file)));
  expect(waiting).toEqual([]);
});

function strayImports(folder: string, concerns: (to: string) => boolean): string[] {
  const allowed: readonly (string | undefined)[] = [folder, ...mayImport[folder]!];
  return production
    .filter((file) => folderOf(file) === folder)
    .flatMap((file) => imports.get(file)!.map((to) => ({ file, to })))
    .filter(({ to }) => concerns(to) && !(to.startsWith('src/') && allowed.includes(folderOf(to))))
    .map(({ file, to }) => `${file} -> ${to}`);
}

/** Returns the innermost folder of `mayImport` that contains a file of `src`. */
function folderOf(file: string): string | undefined {
  const within = Object.keys(mayImport).filter((folder) => file.startsWith(`src/${folder}/`));
  return within.sort((a, b) => b.length - a.length)[0];
}

/** Returns the imports of a file, including types: paths from the root for our own files, names for packages. */
function importsOf(file: string): string[] {
  const { importedFiles } = ts.preProcessFile(read(file), true, true);
  return importedFiles.map(({ fileName }) =>
    fileName.startsWith('.') ? relative(root, resolve(root, dirname(file), fileName)) : fileName,
  );
}

/** Returns the files of the first import cycle found, with its first file again at the end. Empty if there is no cycle. */
function findCircle(graph: ReadonlyMap<string, readonly string[]>): string[] {
  const done = new Set<string>();
  const visit = (file: string, path: readonly string[]): string[] => {
    if (path.includes(file)) return [...path.slice(path.indexOf(file)), file];
    if (done.has(file)) return [];
    for (const next of graph.get(file) ?? []) {
      const circle = visit(next, [...path, file]);
      if (circle.length > 0) return circle;
    }
    done.add(file);
    return [];
  };
  for (const file of graph.keys()) {
    const circle = visit(file, []);
    if (circle.length > 0) return circle;
  }
  return [];
}

function filesIn(folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
    .map((entry) => relative(root, join(entry.parentPath, entry.name)))
    .sort();
}

function read(file: string): string {
  return readFileSync(join(root, file), 'utf8');
}
