import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const root = fileURLToPath(new URL('..', import.meta.url));
const notice = readFileSync(`${root}/NOTICE`, 'utf8').replace(/\s+/g, ' ');

/** Packages that code of the built extension imports; what runs in Node or in tests only is not part of it. */
function shippedPackages(): string[] {
  const files = readdirSync(`${root}/src`, { recursive: true, encoding: 'utf8' }).filter(
    (file) => /\.tsx?$/.test(file) && !/\.test\.tsx?$|^(data|cli)\//.test(file),
  );
  const named = files.flatMap((file) =>
    [
      ...readFileSync(`${root}/src/${file}`, 'utf8')
        // Types leave nothing in it.
        .replace(/^import type [^;]+;/gm, '')
        .matchAll(/(?:from|import\()\s*'([@a-z][\w./@-]*)[?']/g),
    ].map(([, name]) => name!.split('/', name!.startsWith('@') ? 2 : 1).join('/')),
  );
  return [...new Set(named)].filter((name) => !/^(node:|wxt$)/.test(name)).sort();
}

test('every library in the extension is named with its licence', () => {
  const packages = shippedPackages();
  expect(packages).toContain('preact');
  for (const name of packages) {
    const { license } = JSON.parse(readFileSync(`${root}/node_modules/${name}/package.json`, 'utf8')) as {
      license: string;
    };
    expect(notice, name).toContain(name);
    expect(notice, `${name}: ${license}`).toContain(license);
  }
});
