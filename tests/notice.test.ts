import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, test } from 'vitest';
import { foldersOf, noticeOf, readPackage, writeNotice } from '../src/tools/write-notice.ts';

/**
 * The build lists the packages in the extension, with their licences. These tests check how the build finds the
 * packages and licences. `bench/check-sizes.ts` checks the built files.
 */

const root = fileURLToPath(new URL('..', import.meta.url)).replace(/\/$/, '');
const folder = mkdtempSync(join(tmpdir(), 'wordreach-'));
afterAll(() => rmSync(folder, { recursive: true }));
const own = readFileSync(join(root, 'LICENSE'), 'utf8');

function packageOf(name: string, about: object, files: Readonly<Record<string, string>> = {}): string {
  const place = join(folder, name);
  mkdirSync(place, { recursive: true });
  writeFileSync(join(place, 'package.json'), JSON.stringify({ name, version: '1.2.3', ...about }));
  for (const [file, text] of Object.entries(files)) writeFileSync(join(place, file), text);
  return place;
}

test.each([
  ['a package', `${root}/node_modules/preact/dist/preact.module.js`, ['preact']],
  ['one of a scope', `${root}/node_modules/@codemirror/view/dist/index.js`, ['@codemirror/view']],
  ['what the bundler wraps', `\0${root}/node_modules/mammoth/lib/index.js?commonjs-es-import`, ['mammoth']],
  ['a file taken as it is', `${root}/node_modules/pdfjs-dist/build/pdf.worker.min.mjs?url`, ['pdfjs-dist']],
  [
    'one inside another',
    `${root}/node_modules/mammoth/node_modules/pako/a.js`,
    ['mammoth/node_modules/pako'],
  ],
  [
    'one that has others in its file',
    `${root}/node_modules/docx/dist/index.mjs`,
    ['docx', 'fflate', 'nanoid'],
  ],
  ['a helper of the bundler', '\0vite/preload-helper.js', ['vite']],
  ['our own', `${root}/src/ui/masthead.tsx`, []],
])('finds the package of a module: %s', (_name, id, packages) => {
  expect(foldersOf(id, root)).toEqual(packages.map((name) => `${root}/node_modules/${name}`));
});

describe('a package', () => {
  test('is listed with its name, version, licence and all its licence texts', () => {
    const files = { 'LICENSE.md': 'Do as you like.\r\n', NOTICE: 'Made by Wilma.', 'readme.md': 'no' };
    expect(readPackage(packageOf('good', { license: 'Apache-2.0' }, files), own)).toEqual({
      name: 'good',
      version: '1.2.3',
      licence: 'Apache-2.0',
      text: 'Do as you like.\n\nMade by Wilma.',
    });
  });

  test.each(['GPL-3.0-only', 'UNLICENSED', 'SEE LICENSE IN x', undefined, 'constructor'])(
    'under %s, which nobody reviewed, stops the build',
    (license) => {
      const place = packageOf('strict', { license }, { LICENSE: 'text' });
      expect(() => readPackage(place, own)).toThrow(
        /strict 1\.2\.3 is under ".*", which nobody has reviewed/,
      );
    },
  );

  test('without the text of its licence stops the build, unless its licence is also ours', () => {
    expect(() => readPackage(packageOf('silent', { license: 'BSD-3-Clause' }), own)).toThrow(
      /without the text/,
    );
    const { text } = readPackage(packageOf('small', { license: 'MIT', author: 'Ines Falk' }), own);
    expect(text).toContain('Copyright (c) Ines Falk');
    expect(text.replace(/^Copyright .*$/m, '')).toBe(own.trim().replace(/^Copyright .*$/m, ''));
  });

  test('under MPL 2.0 gives the address of its source, or stops the build', () => {
    const about = { license: 'MPL-2.0', repository: { url: 'git+https://code.example/shared.git' } };
    const { text } = readPackage(packageOf('shared', about, { LICENSE: 'Its terms.' }), own);
    expect(text).toBe('Its source: https://code.example/shared, version 1.2.3.\n\nIts terms.');
    const silent = packageOf('hidden', { license: 'MPL-2.0' }, { LICENSE: 'Its terms.' });
    expect(() => readPackage(silent, own)).toThrow(/does not say where its source is/);
  });
});

test('a notice is the same for every order of the packages, and begins with the data', () => {
  const [a, b] = ['a', 'b'].map((name) => ({ name, version: '1', licence: 'MIT', text: `Text of ${name}.` }));
  const notice = writeNotice('The data.\n', [b!, a!]);
  expect(notice).toBe(writeNotice('The data.\n', [a!, b!]));
  expect(notice).toMatch(/^The data\.\n.*a 1 \(MIT\).*Text of a\..*b 1 \(MIT\).*Text of b\.\n$/s);
});

test('the packages that pages import today are all under a reviewed licence', () => {
  const { dependencies, devDependencies } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
    dependencies: Record<string, string>;
    devDependencies: Record<string, string>;
  };
  const bundled = [
    'preact',
    'syllable',
    'docx',
    'mammoth',
    'pdfjs-dist',
    'fflate',
    'idb',
    'diff',
    '@codemirror/view',
    'webextension-polyfill',
  ];
  for (const name of bundled) expect({ ...dependencies, ...devDependencies }).toHaveProperty([name]);
  const notice = noticeOf(
    root,
    bundled.map((name) => join(root, 'node_modules', name)),
  );
  for (const name of bundled) expect(notice).toMatch(new RegExp(`^${name} \\d+\\.`, 'm'));
});
