import { copyFile, mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, type Plugin } from 'esbuild';
import ts from 'typescript';
import { foldersOf, noticeOf } from './write-notice.ts';

/**
 * Fills `.output/npm`, the folder that `npm pack` packs: the commands and the engine as JavaScript that needs no other
 * package, the engine's types, and the notices of the bundled packages.
 */
const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));
const root = here('../../').replace(/[\\/]$/, '');
// The output folder is at the same depth as this folder, because the word table and the starters are found by relative
// paths.
const into = here('../../.output/npm');

await rm(into, { recursive: true, force: true });
const { metafile } = await build({
  entryPoints: {
    wordreach: here('../cli/wordreach.ts'),
    'vet-worker': here('../cli/vet-worker.ts'),
    analyze: here('../analyze/index.ts'),
  },
  outdir: into,
  outExtension: { '.js': '.mjs' },
  bundle: true,
  platform: 'node',
  format: 'esm',
  splitting: true,
  target: 'node20',
  // Node knows \p{…}. Otherwise esbuild makes such a pattern anew at each use.
  supported: { 'regexp-unicode-property-escapes': true },
  metafile: true,
  // Older packages (CommonJS) load Node modules by `require`, which ES modules lack.
  banner: {
    js: "import { createRequire as makeRequire } from 'node:module'; const require = makeRequire(import.meta.url);",
  },
  plugins: [drawNothing()],
  logLevel: 'error',
  logOverride: { 'ignored-bare-import': 'error' },
});
// The PDF reader expects its worker file in its own folder.
await copyFile(`${root}/node_modules/pdfjs-dist/legacy/build/pdf.worker.mjs`, `${into}/pdf.worker.mjs`);
await writeTypes();
const folders = Object.keys(metafile.inputs).flatMap((input) => foldersOf(resolve(root, input), root));
await writeFile(`${into}/NOTICE.txt`, noticeOf(root, folders));

/**
 * Replaces the drawing package that the PDF reader requires. The reader makes a matrix with that package as it starts,
 * but the commands read only text.
 */
function drawNothing(): Plugin {
  const canvas = 'canvas = require("@napi-rs/canvas");';
  return {
    name: 'draw-nothing',
    setup({ onLoad }) {
      onLoad({ filter: /pdfjs-dist[\\/]legacy[\\/]build[\\/]pdf\.mjs$/ }, async ({ path }) => {
        const code = await readFile(path, 'utf8');
        if (!code.includes(canvas)) throw new Error('pdfjs-dist looks for its canvas in another way now.');
        return {
          contents: code.replace(
            canvas,
            'canvas = { DOMMatrix: class {}, ImageData: class {}, Path2D: class {} };',
          ),
        };
      });
    },
  };
}

/**
 * Writes the types of the engine. They refer to files with the ending used in the sources, which differs in the
 * package.
 */
async function writeTypes(): Promise<void> {
  const config = ts.getParsedCommandLineOfConfigFile(
    here('../analyze/tsconfig.json'),
    {
      noEmit: false,
      declaration: true,
      emitDeclarationOnly: true,
      rootDir: here('../analyze'),
      outDir: `${into}/types`,
    },
    { ...ts.sys, onUnRecoverableConfigFileDiagnostic: () => undefined },
  )!;
  const written: Promise<void>[] = [];
  const program = ts.createProgram(config.fileNames, config.options);
  program.emit(undefined, (path, text) => {
    written.push(
      mkdir(resolve(path, '..'), { recursive: true }).then(() =>
        writeFile(path, text.replaceAll(/(from '\.[^']*|import\("\.[^"]*)\.ts(?=['"])/g, '$1.js')),
      ),
    );
  });
  await Promise.all(written);
}
