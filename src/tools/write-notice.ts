import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Plugin } from 'vite';

/** A package whose code or typeface is in the built extension. */
export interface BundledPackage {
  readonly name: string;
  readonly version: string;
  /** The licence in its package.json (SPDX), or the chosen one if the package offers a choice. */
  readonly licence: string;
  /** The licence of the package, and its notice where it has one. */
  readonly text: string;
}

/**
 * Licences that we have read. Each allows the extension to be distributed under MIT, provided that the licence text is
 * included.
 */
const REVIEWED: ReadonlySet<string> = new Set([
  '0BSD',
  'Apache-2.0',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'BlueOak-1.0.0',
  'ISC',
  'MIT',
  'MIT AND Zlib',
  'MPL-2.0',
  'OFL-1.1',
]);

/** Licences that require the location of the source if code made from their files is distributed (MPL 2.0, 3.2). */
const WITH_SOURCE: ReadonlySet<string> = new Set(['MPL-2.0']);

/** Licence names that packages write in their own way, and the licence that was read or chosen for each. */
const SAID_OTHERWISE: Readonly<Record<string, string>> = {
  '(MIT OR GPL-3.0-or-later)': 'MIT',
  '(MIT AND Zlib)': 'MIT AND Zlib',
};

/** Packages whose package.json names no SPDX licence, with the licence in their own file. */
const READ_BY_HAND: Readonly<Record<string, string>> = {
  // "BSD", in the version with two clauses.
  duck: 'BSD-2-Clause',
};

/** The packages that have others in their own files, as comments, `require` calls or source maps there show. */
const INSIDE: Readonly<Record<string, readonly string[]>> = {
  docx: ['fflate', 'nanoid'],
  jszip: ['immediate', 'lie', 'pako', 'setimmediate'],
  'tesseract.js': ['bmp-js', 'idb-keyval', 'is-url', 'regenerator-runtime', 'wasm-feature-detect', 'zlibjs'],
};

/**
 * Licence files of third-party files that packages contain next to their code. The build copies these files unchanged
 * (`wxt.config.ts`).
 */
const BESIDE: Readonly<Record<string, readonly string[]>> = {
  'pdfjs-dist': ['JBIG2', 'OPENJPEG', 'PDFJS_JBIG2', 'PDFJS_OPENJPEG'].map((name) => `wasm/LICENSE_${name}`),
};

/** Helpers that the bundler adds to its output, by module name. */
const HELPERS: readonly (readonly [RegExp, string])[] = [
  [/^\0?vite\//, 'vite'],
  [/^\0rolldown\//, 'rolldown'],
];

/** Matches names of files that contain a licence or a notice. */
const LICENCE_FILE = /^(?:licen[cs]e|copying|notice)(?:[.-].*)?$/i;
/**
 * Matches where the licences of the bundler's own dependencies start in its licence file. Nothing of these dependencies
 * is in its output.
 */
const OF_ITS_OWN_PARTS = /^#+ Licenses of bundled dependencies$/m;

/** Collects the folders of packages, below `root`, whose modules or files, such as typefaces, are in the bundle. */
export function gatherPackages(root: string, folders: Set<string>): Plugin {
  return {
    name: 'gather-packages',
    generateBundle(_options, bundle) {
      for (const part of Object.values(bundle)) {
        const sources =
          part.type === 'chunk'
            ? Object.keys(part.modules)
            : part.originalFileNames.map((file) => resolve(root, file));
        for (const source of sources) for (const folder of foldersOf(source, root)) folders.add(folder);
      }
    },
  };
}

/** Returns the folder of a module's package and the folders of packages inside it. Returns none for a module of our own. */
export function foldersOf(id: string, root: string): readonly string[] {
  const helper = HELPERS.find(([name]) => name.test(id))?.[1];
  const packages = `${root}/node_modules`;
  if (helper !== undefined) return [join(packages, helper)];
  const found = /^\0?(.*[\\/]node_modules[\\/])((?:@[^\\/]+[\\/])?[^\\/?]+)/.exec(id);
  if (!found) return [];
  const [, place = '', name = ''] = found;
  const inside = Object.hasOwn(INSIDE, name) ? INSIDE[name]! : [];
  return [join(place, name), ...inside.map((other) => join(packages, other))];
}

/**
 * Reads the licence data of a package. `own` is our licence: a package under MIT without a licence file gets its
 * wording. Throws if the licence was not reviewed or its text is missing.
 */
export function readPackage(folder: string, own: string): BundledPackage {
  const { name, version, license, author, repository } = JSON.parse(
    readFileSync(join(folder, 'package.json'), 'utf8'),
  ) as { name: string; version: string; license?: unknown; author?: unknown; repository?: unknown };
  const said = Object.hasOwn(READ_BY_HAND, name) ? READ_BY_HAND[name]! : String(license);
  const licence = Object.hasOwn(SAID_OTHERWISE, said) ? SAID_OTHERWISE[said]! : said;
  if (!REVIEWED.has(licence))
    throw new Error(
      `${name} ${version} is under "${licence}", which nobody has reviewed. Read it, and list it in write-notice.ts, or do without the package.`,
    );
  const beside = Object.hasOwn(BESIDE, name) ? BESIDE[name]! : [];
  const text =
    readTexts(folder, beside) || (licence === 'MIT' ? textLike(own, authorOf(author) || name) : '');
  if (text === '')
    throw new Error(
      `${name} ${version} comes without the text of its licence (${licence}). Get its text, or do without it.`,
    );
  if (!WITH_SOURCE.has(licence)) return { name, version, licence, text };
  const source = sourceOf(repository);
  if (source === '')
    throw new Error(`${name} ${version} does not say where its source is, as its licence (${licence}) asks.`);
  return { name, version, licence, text: `Its source: ${source}, version ${version}.\n\n${text}` };
}

/**
 * Returns the notice of a store package: `head` (data and authors), then each package with its licence, in alphabetical
 * order.
 */
export function writeNotice(head: string, packages: readonly BundledPackage[]): string {
  const sorted = packages.toSorted((a, b) => (`${a.name} ${a.version}` < `${b.name} ${b.version}` ? -1 : 1));
  const line = '-'.repeat(72);
  const parts = sorted.map(
    ({ name, version, licence, text }) => `${line}\n${name} ${version} (${licence})\n${line}\n\n${text}\n`,
  );
  return `${head.trimEnd()}\n\nCode or typefaces of these packages are in the extension, each under its own licence:\n\n${parts.join('\n')}`;
}

/** Returns the notice of the bundled packages, for a repository in `root`. Throws like `readPackage`. */
export function noticeOf(root: string, folders: Iterable<string>): string {
  const read = (name: string): string => readFileSync(join(root, name), 'utf8');
  const own = read('LICENSE');
  const packages = new Map(
    [...folders].map((folder) => {
      const one = readPackage(folder, own);
      return [`${one.name} ${one.version}`, one] as const;
    }),
  );
  if (packages.size === 0)
    throw new Error('No package was found in the bundle, though pages are made with one.');
  return writeNotice(read('NOTICE'), [...packages.values()]);
}

function readTexts(folder: string, beside: readonly string[]): string {
  const files = readdirSync(folder).filter((file) => LICENCE_FILE.test(file));
  return [...files.sort(), ...beside]
    .map((file) => readFileSync(join(folder, file), 'utf8').replaceAll('\r\n', '\n'))
    .map((text) => text.split(OF_ITS_OWN_PARTS)[0]!.trim())
    .join('\n\n');
}

function textLike(own: string, owner: string): string {
  return own.trim().replace(/^Copyright .*$/m, `Copyright (c) ${owner}`);
}

function sourceOf(repository: unknown): string {
  const { url } = (repository ?? {}) as { url?: unknown };
  return typeof url === 'string' ? url.replace(/^git\+|\.git$/g, '') : '';
}

function authorOf(author: unknown): string {
  if (typeof author === 'string') return author;
  const { name } = (author ?? {}) as { name?: unknown };
  return typeof name === 'string' ? name : '';
}
