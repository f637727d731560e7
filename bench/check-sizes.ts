import { readdirSync, readFileSync } from 'node:fs';
import { join, normalize } from 'node:path';
import { gzipSync } from 'node:zlib';
import { zipSync } from 'fflate';
import { builtExtension } from '../src/tools/launch-extension.ts';

/**
 * Prints the size of the built extension: each script and each page with everything it loads at once, gzipped, and the
 * package as a zip. Fails if a limit is passed, if a library got into a script that has to do without it, or if the
 * licence of a library is not in the package.
 */

/** The size limit of a script or page, in KB of 1024 bytes, gzipped. Other files are only shown. */
const LIMITS: Readonly<Record<string, number>> = {
  'page.js': 25,
  'page-article.js': 25,
  'page-card.js': 25,
  'page-plain-card.js': 25,
  'page-unread.js': 25,
  'page-veil.js': 25,
  'card.html': 40,
  'sidepanel.html': 40,
};
/**
 * The size limit of the package, in KB, zipped. The package includes the texts of the licences, a guessing model of 520
 * KB, 260 KB of phrases and counts in the table of swaps, 120 KB for the typeface of sheets (already packed), 20 KB for
 * the texts of the first shelf, and 30 KB for British readings.
 * The reader of pictures of text has 4080 KB: 2,880 KB for its knowledge of English print, and 1,060 KB for its core.
 * The page of PDF files has 140 KB, of which 120 KB unpack the pictures of scans.
 */
const PACKAGE = 4860 + 4080 + 140;
/** The size limit of the typeface, in KB: a regular, a bold, and vowels with macron or breve. */
const TYPEFACE = 150;

/** For each library, a piece of code that occurs nowhere else. */
const LIBRARIES: Readonly<Record<string, string>> = {
  'pdfjs-dist': 'GlobalWorkerOptions',
  mammoth: 'mammoth',
  docx: 'word/numbering',
  '@codemirror/view': 'cm-content',
  '@mozilla/readability': 'readability-page',
  preact: 'shouldComponentUpdate',
  valibot: 'vendor:`valibot`',
  'webextension-polyfill': '__mozWebExtensionPolyfillReject__',
  '@fontsource/andika': 'andika-latin',
};
/** The libraries that each script may contain. The script must do without all other libraries. */
const ALLOWED: Readonly<Record<string, readonly string[]>> = {
  'page.js': [],
  'page-article.js': ['@mozilla/readability'],
  'page-card.js': [],
  'page-plain-card.js': ['preact'],
  'page-unread.js': [],
  'page-veil.js': [],
  'background.js': ['webextension-polyfill'],
};

const files = readdirSync(builtExtension, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile())
  .map((entry) =>
    normalize(join(entry.parentPath, entry.name)).slice(builtExtension.length).replace(/^\//, ''),
  );
const content = new Map(files.map((file) => [file, readFileSync(join(builtExtension, file))]));
const text = (file: string): string => content.get(file)!.toString('utf8');
const faults: string[] = [];

for (const entry of files.filter((file) => /^[^/]+\.(?:html|js)$/.test(file)).sort()) {
  const loaded = entry.endsWith('.html') ? filesOfPage(entry) : [entry];
  report(entry, sum(loaded.map((file) => gzipSync(content.get(file)!, { level: 9 }).length)), LIMITS[entry]);
}
report('package', zipSync(Object.fromEntries(content), { level: 9 }).length, PACKAGE);
report(
  'typeface',
  sum(files.filter((file) => file.endsWith('.woff2')).map((file) => content.get(file)!.length)),
  TYPEFACE,
);
for (const entry of Object.keys(LIMITS)) if (!content.has(entry)) faults.push(`${entry} was not built`);

const scripts = files.filter((file) => file.endsWith('.js'));
for (const [library, sign] of Object.entries(LIBRARIES)) {
  const holders = scripts.filter((file) => text(file).includes(sign));
  if (holders.length === 0)
    faults.push(`${library} is not known by "${sign}" any more; name another sign of it`);
  for (const [script, allowed] of Object.entries(ALLOWED))
    if (holders.includes(script) && !allowed.includes(library))
      faults.push(`${library} is in ${script}; load it where it is needed`);
}
const notice = content.get('NOTICE.txt')?.toString('utf8') ?? '';
for (const library of Object.keys(LIBRARIES))
  if (!notice.includes(`\n${library} `)) faults.push(`NOTICE.txt does not name ${library}`);
for (const fault of faults) console.error(fault);
if (faults.length > 0) process.exitCode = 1;

/**
 * Returns the scripts and style sheets of a page, with the scripts they import at once. Scripts that are imported only
 * on demand are left out.
 */
function filesOfPage(page: string): string[] {
  const found = new Set<string>();
  const enter = (file: string): void => {
    if (found.has(file)) return;
    found.add(file);
    if (!file.endsWith('.js')) return;
    for (const [, to] of text(file).matchAll(/(?:from|import)\s*["'](\.[^"']+)["']/g))
      enter(join(file, '..', to!));
  };
  for (const [, file] of text(page).matchAll(/(?:src|href)="\/([^"]+\.(?:js|css))"/g)) enter(file!);
  return [...found];
}

function report(what: string, bytes: number, limit: number | undefined): void {
  const kilobytes = bytes / 1024;
  const of = limit === undefined ? '' : ` of ${limit} KB`;
  console.log(`${what.padEnd(18)} ${kilobytes.toFixed(1).padStart(7)}${of}`);
  if (limit !== undefined && kilobytes > limit) faults.push(`${what} is larger than ${limit} KB`);
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}
