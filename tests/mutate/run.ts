import { execFileSync, spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { globSync } from 'tinyglobby';
import { createPicker } from '../../src/lesson/picker.ts';
import { type Change, listChanges } from './list-changes.ts';
import { createTestFinder } from './tests-of.ts';

/**
 * `npm run mutate [-- --count 50 --seed 1 --only WORD --browser]`: makes the given number of small changes, one at a
 * time, in a copy of the last commit. For each change, it runs the tests that reach the changed file, nearest first. It
 * reports the changes that no test noticed. Changes are drawn evenly from the folders below.
 * With `--browser`, each change that no other test noticed is tried in Chromium. The specs that bundle the changed file
 * come first. Then the changed extension is built, and the journeys for the folder of the file are run.
 * A run of 50 changes takes an hour on two cores, or half of that without browsers.
 */
const { values } = parseArgs({
  options: {
    count: { type: 'string', default: '50' },
    seed: { type: 'string', default: '1' },
    only: { type: 'string', default: '' },
    browser: { type: 'boolean', default: false },
    /** The highest number of test files to run, nearest first. */
    tests: { type: 'string', default: '30' },
    /** The commit to change and test. */
    at: { type: 'string', default: 'HEAD' },
    out: { type: 'string', default: '.output/mutate.tsv' },
    /** The number of the change to continue from, after a run that was ended. */
    from: { type: 'string', default: '1' },
    /** Only lists the changes, without making them. */
    list: { type: 'boolean', default: false },
  },
});
const FOLDERS = ['analyze', 'overlay', 'pages', 'host', 'lesson', 'swap'];
/**
 * Specs that test the built extension, by the sources they cover. A spec that bundles a part by itself is found by its
 * imports.
 */
const JOURNEYS: readonly (readonly [RegExp, readonly string[]])[] = [
  [/^src\/overlay\/card|^src\/pages\/card/, ['card-frame', 'card-covers', 'private-marks']],
  [/^src\/overlay/, ['page-kinds', 'scope', 'private-marks', 'panel']],
  [/^src\/host\/(?:page-talk|background)/, ['panel', 'faults', 'more-faults', 'page-kinds']],
  [/^src\/host\/(?:store|sync|files)/, ['restore', 'groups', 'shelf', 'desk-drafts']],
  [/^src\/host\/data/, ['panel', 'faults']],
  [/^src\/host\/pictures|^src\/pages\/picture/, ['picture']],
  [/^src\/pages\/desk/, ['desk', 'desk-out', 'desk-drafts']],
  [/^src\/pages\/(?:groups|panel|report|shelf|lesson|pdf)/, ['NAME']],
  [/^src\/pages\/welcome/, ['first-run']],
];

const root = fileURLToPath(new URL('../..', import.meta.url));
const copy = mkdtempSync(join(tmpdir(), 'wordreach-mutate-'));
const clear = (): void => rmSync(copy, { recursive: true, force: true });
process.on('exit', clear);
for (const signal of ['SIGINT', 'SIGTERM'] as const) process.on(signal, () => process.exit(130));
execFileSync('bash', ['-c', `git archive ${values.at} | tar -x -C "${copy}"`], { cwd: root });
mkdirSync(join(copy, 'public'), { recursive: true });
for (const made of ['node_modules', '.wxt', 'public/data']) symlinkSync(join(root, made), join(copy, made));
// Vite serves no files from outside its root. The links made above lead outside the root, so this limit is turned off.
const config = join(copy, 'tests/vitest.config.ts');
const begin = 'export default defineConfig({';
writeFileSync(
  config,
  readFileSync(config, 'utf8').replace(begin, `${begin} server: { fs: { strict: false } },`),
);

const testsOf = createTestFinder(copy);
interface Drawn extends Change {
  readonly file: string;
}
const drawn = draw(Number(values.count), Number(values.seed)).filter(({ file }) =>
  new RegExp(values.only).test(file),
);
const rows: string[] = [];
let survived = 0;
for (const [n, change] of drawn.entries()) {
  if (n + 1 < Number(values.from)) continue;
  const text = readFileSync(join(copy, change.file), 'utf8');
  const line = text.slice(0, change.start).split('\n').length;
  const was = text.slice(change.start, change.end).replaceAll(/\s+/g, ' ');
  if (values.list) {
    console.log(
      `${change.kind} ${change.file}:${line} ${was} -> ${change.becomes}`,
      testsOf(change.file).length,
    );
    continue;
  }
  writeFileSync(
    join(copy, change.file),
    text.slice(0, change.start) + change.becomes + text.slice(change.end),
  );
  const noticed = notice(change.file);
  writeFileSync(join(copy, change.file), text);
  if (noticed === null) survived++;
  const place = `${change.file}:${line}`;
  const row = [
    noticed ? 'noticed' : 'SURVIVED',
    change.kind,
    place,
    was,
    change.becomes.replaceAll(/\s+/g, ' '),
    noticed ?? '',
  ];
  rows.push(row.join('\t'));
  console.log(
    `${n + 1}/${drawn.length} ${row.slice(0, 3).join(' ')}: ${was} -> ${row[4]}${noticed ? ` (${noticed})` : ''}`,
  );
  mkdirSync(dirname(resolve(root, values.out)), { recursive: true });
  writeFileSync(resolve(root, values.out), `${rows.join('\n')}\n`);
}
console.log(`${rows.length - survived} noticed, ${survived} survived`);

/**
 * Draws the same number of changes from each folder, and takes the folders in turns. A run that is ended early then has
 * some changes from each folder. The same seed gives the same changes.
 */
function draw(count: number, seed: number): Drawn[] {
  const byFolder = FOLDERS.map((folder) => {
    const where = { cwd: copy, ignore: ['**/*.test.*', '**/*.d.ts'] };
    const all = globSync(`src/${folder}/**/*.{ts,tsx}`, where)
      .sort()
      .flatMap((file) =>
        listChanges(file, readFileSync(join(copy, file), 'utf8')).map((change) => ({ file, ...change })),
      );
    return createPicker(seed, folder).pick(all, Math.ceil(count / FOLDERS.length));
  });
  return Array.from({ length: count }, (_, n) => {
    const changes = byFolder[n % FOLDERS.length]!;
    return changes[Math.floor(n / FOLDERS.length) % changes.length]!;
  });
}

/** Returns the test that noticed the change, or null. */
function notice(file: string): string | null {
  const near = testsOf(file).map(({ file }) => file);
  const plain = near
    .filter((test) => test.endsWith('.test.ts') || test.endsWith('.test.tsx'))
    .slice(0, Number(values.tests));
  // The first six test files run by themselves, since a few files give an answer sooner.
  const found = run(plain.slice(0, 6), '') ?? run(plain.slice(6), '');
  if (found !== null || !values.browser) return found;
  // Specs that bundle a part of the sources by themselves need no build.
  const bundled = near.filter((test) => test.endsWith('.spec.ts'));
  const noticed = run(bundled, 'e2e');
  if (noticed !== null) return noticed;
  const page = /^src\/pages\/(\w+)/.exec(file)?.[1] ?? '';
  const named = JOURNEYS.find(([where]) => where.test(file))?.[1] ?? [];
  const build = spawnSync('npx', ['wxt', 'build'], { cwd: copy, encoding: 'utf8' });
  if (build.status !== 0) return 'the build';
  return run(
    named
      .map((name) => `tests/e2e/${name === 'NAME' ? page : name}.spec.ts`)
      .filter((spec) => !bundled.includes(spec)),
    'e2e',
  );
}

function run(tests: readonly string[], project: string): string | null {
  if (tests.length === 0) return null;
  const report = join(copy, '.report.json');
  rmSync(report, { force: true });
  const { status, signal, error } = spawnSync(
    'npx',
    [
      ...['vitest', 'run', '--config', 'tests/vitest.config.ts', '--bail', '1', '--retry', '0'],
      ...(project
        ? ['--project', project]
        : ['unit', 'apart', 'views'].flatMap((name) => ['--project', name])),
      ...['--reporter=json', `--outputFile.json=${report}`],
      ...tests,
    ],
    { cwd: copy, encoding: 'utf8', timeout: 600_000 },
  );
  if (status === 0) return null;
  // The run was ended by somebody, not by the change.
  if (signal && !error) process.exit(130);
  try {
    const { testResults } = JSON.parse(readFileSync(report, 'utf8'));
    for (const { name, assertionResults, message } of testResults) {
      const failed = assertionResults.find((one: { status: string }) => one.status === 'failed');
      if (failed || message)
        return `${name.slice(name.indexOf(copy) + copy.length + 1)}: ${failed?.fullName ?? 'does not run'}`;
    }
  } catch {
    // There is no report, because the run was ended.
  }
  return 'no end within ten minutes';
}
