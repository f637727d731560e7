// Puts the commands and the worker of `vet` into one file of JavaScript each, .output/cli/vet.mjs, vet-worker.mjs, word.mjs and so on, which
// start in a third of the time that each process or thread takes to translate TypeScript for itself.
import { randomUUID } from 'node:crypto';
import { mkdir, rename, writeFile } from 'node:fs/promises';
import { basename, dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const here = (path) => fileURLToPath(new URL(path, import.meta.url));

const entries = ['vet', 'vet-worker', 'word', 'patterns', 'swap'];
const isEntry = ({ path }) => Number(entries.includes(basename(path, '.mjs')));

const { outputFiles } = await build({
  entryPoints: entries.map((name) => here(`../cli/${name}.ts`)),
  // As deep as this folder, because the word table is looked for from here.
  outdir: here('../../.output/cli'),
  outExtension: { '.js': '.mjs' },
  bundle: true,
  packages: 'external',
  platform: 'node',
  format: 'esm',
  splitting: true,
  target: 'node20',
  // Node knows \p{…}. Otherwise esbuild makes such a pattern anew at each use.
  supported: { 'regexp-unicode-property-escapes': true },
  logLevel: 'warning',
  // A file that is there for its effects would be left out without a word in what it does.
  logOverride: { 'ignored-bare-import': 'error' },
  write: false,
});
// The parts first that others load.
for (const { path, contents } of outputFiles.toSorted((a, b) => isEntry(a) - isEntry(b))) {
  // Several may run at once: none may find half a file.
  const half = `${path}.${randomUUID()}`;
  await mkdir(dirname(path), { recursive: true });
  await writeFile(half, contents);
  await rename(half, path);
}
