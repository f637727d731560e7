import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { PDFDocument } from 'pdf-lib';
import { afterAll, beforeAll, expect, test } from 'vitest';

/** Tests the package as other people get it: packed, and installed in an empty folder without any network. */

const run = promisify(execFile);
const root = fileURLToPath(new URL('..', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'wordreach-package-'));
afterAll(() => rmSync(folder, { recursive: true }));
/** The environment without npm's settings. A test started by npm would pass these settings on to its own commands. */
const env = Object.fromEntries(
  Object.entries(process.env).filter(([name]) => !/^(?:npm_|INIT_CWD$)/.test(name)),
);

beforeAll(async () => {
  // Does the same as `prepack`, except for the word table, which is made before the tests.
  await run('npx', ['tsx', 'src/tools/bundle-package.ts'], { cwd: root, env });
  const { stdout } = await run('npm', ['pack', '--ignore-scripts', '--json', '--pack-destination', folder], {
    cwd: root,
    env,
  });
  const [{ filename }] = JSON.parse(stdout.slice(stdout.indexOf('[\n'))) as [{ filename: string }];
  writeFileSync(join(folder, 'package.json'), '{"private": true, "type": "module"}');
  await run('npm', ['install', '--offline', '--no-audit', '--no-fund', join(folder, filename)], {
    cwd: folder,
    env,
  });
}, 300_000);

const command = (...args: string[]) =>
  run(join(folder, 'node_modules/.bin/wordreach'), args, { cwd: folder, env });

test('the command of the installed package splits a word, lists patterns, and vets a text and a PDF', async () => {
  expect((await command('word', 'hopping')).stdout).toMatch(/built +hop \+ -ing/);
  expect((await command('patterns')).stdout).toMatch(/^ {2}short-a/m);
  writeFileSync(join(folder, 'tide.txt'), 'The tide is out. Otto sat in the mud.');
  const pdf = await PDFDocument.create();
  pdf.addPage().drawText('Bram has a net.', { x: 50, y: 700 });
  writeFileSync(join(folder, 'net.pdf'), await pdf.save());
  const group = 'node_modules/wordreach/profiles/groups/herons.json';
  expect((await command('vet', '--group', group, 'tide.txt')).stdout).toMatch(/% readable/);
  const { stdout, stderr } = await command(
    'vet',
    '--group',
    group,
    '--out',
    'csv',
    '--jobs',
    '2',
    'net.pdf',
    'tide.txt',
  );
  const [, ...rows] = stdout.trim().split('\n');
  expect(rows.map((row) => row.split(',')[6])).toEqual(['4', '8']);
  expect(stderr).toBe('');
});

test('the command of the installed package explains its usage under its own name after a wrong call', async () => {
  await expect(command('vet')).rejects.toMatchObject({
    code: 2,
    stderr: expect.stringContaining('Usage: wordreach vet --group'),
  });
  await expect(command('sail')).rejects.toMatchObject({
    code: 2,
    stderr: expect.stringContaining('There is no command "sail"'),
  });
});

test('the engine of the installed package analyses words and has type declarations', async () => {
  const program = `import { readFileSync } from 'node:fs';
import { createAnalyzer, openLexicon } from 'wordreach/analyze';
import type { Reading } from '../node_modules/wordreach/.output/npm/types/types.js';
const bytes: Uint8Array = readFileSync(new URL(import.meta.resolve('wordreach/data/lexicon.bin')));
const [reading] = createAnalyzer(openLexicon(bytes)).analyze('hopping').readings;
const known: Reading | undefined = reading;
console.log(known?.base);
`;
  writeFileSync(join(folder, 'use.ts'), program.replace('../node_modules', './node_modules'));
  const strict = ['--strict', '--target', 'es2022', '--module', 'nodenext', '--types', 'node'];
  const found = ['--typeRoots', join(root, 'node_modules/@types'), join(folder, 'use.ts')];
  await run(join(root, 'node_modules/.bin/tsc'), [...strict, ...found], { cwd: folder }).catch(
    ({ stdout }: { stdout: string }) => expect.fail(stdout),
  );
  const { stdout } = await run(process.execPath, ['use.js'], { cwd: folder });
  expect(stdout).toBe('hop\n');
});
