import { readFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { globSync } from 'tinyglobby';
import { defineConfig } from 'vitest/config';

const root = new URL('..', import.meta.url).pathname;
const unit = [
  'src/**/*.test.ts',
  'src/**/*.test.tsx',
  'tests/*.test.ts',
  'tests/{properties,lesson}/*.test.ts',
];
const all = globSync(unit, { cwd: root }).map((file) => ({
  file,
  text: readFileSync(`${root}${file}`, 'utf8'),
}));
/**
 * Tests that replace a part of our code or of the machine, or start other programs. Each of these files has a process
 * of its own.
 */
const apart = all
  .filter(({ text }) =>
    /\bvi\.|fake-indexeddb|fakes\/(?:local-storage|extension)|\bprocess\.|\bglobalThis\b|node:child_process|happy-dom/.test(
      text,
    ),
  )
  .map(({ file }) => file);

/**
 * Makes tests without a browser use the build for Chromium. FIREFOX is emptied, because it may hold the path of a
 * browser, set by hand or by `get-browsers.ts`, and Vitest passes the environment to `import.meta.env`.
 */
const env = { FIREFOX: '' };

/** A teacher's main jobs in the built extension, with one file for each browser. */
const journeys = { e2e: 'tests/e2e/eight-jobs.spec.ts', firefox: 'tests/e2e/firefox.spec.ts' } as const;
/**
 * Returns the specs to run in a browser. `npm test` runs only the journeys, and `npm run test:browsers` runs all specs.
 * If the journeys have been run already, all other specs are run.
 */
function specsOf(browser: keyof typeof journeys, all: string[], not: string[] = []) {
  const { JOURNEYS } = process.env;
  if (JOURNEYS === 'only') return { include: [journeys[browser]] };
  return { include: all, exclude: [...not, ...(JOURNEYS === 'done' ? [journeys[browser]] : [])] };
}

/**
 * In milliseconds. The tests go through whole tables. This takes some seconds, or minutes on a machine that is busy
 * with much else.
 */
const PATIENCE = 240_000;

const inBrowsers = {
  globalSetup: 'tests/get-browsers.ts',
  testTimeout: 60_000,
  hookTimeout: 60_000,
  // A busy machine is slow to answer. A condition that holds is seen at once anyway.
  expect: { poll: { timeout: 10_000 } },
  // A browser may fail by chance. .ci/run names each test that needed a second try, so that its cause is looked for.
  retry: 1,
  // Two browsers run at once. Each browser is used for all files of its worker, and forgets its data between the files.
  // The browsers start after the tests without a browser, which use the whole machine. Firefox begins as soon as a
  // worker is free.
  isolate: false,
  maxWorkers: 2,
  sequence: { groupOrder: 1 },
};

export default defineConfig({
  test: {
    root,
    maxWorkers: Math.max(2, availableParallelism()),
    projects: [
      {
        extends: true,
        test: {
          name: 'unit',
          env,
          setupFiles: ['tests/speak-english.ts'],
          include: unit,
          exclude: apart,
          isolate: false,
          testTimeout: PATIENCE,
        },
      },
      {
        extends: true,
        test: {
          name: 'apart',
          env,
          globalSetup: 'tests/bundle-commands.ts',
          setupFiles: ['tests/speak-english.ts', 'tests/fakes/locks.ts'],
          include: apart,
          testTimeout: PATIENCE,
        },
      },
      {
        extends: true,
        test: {
          name: 'views',
          env,
          environment: 'happy-dom',
          setupFiles: ['tests/speak-english.ts', 'tests/fakes/locks.ts', 'tests/fakes/extension.ts'],
          include: ['tests/views/*.test.ts'],
          // A busy machine is slow to read the tables and to make the first lesson.
          testTimeout: 60_000,
          hookTimeout: 60_000,
          expect: { poll: { timeout: 10_000 } },
        },
      },
      {
        extends: true,
        test: {
          name: 'e2e',
          ...inBrowsers,
          ...specsOf('e2e', ['tests/e2e/*.spec.ts', 'tests/attack/*.spec.ts'], [journeys.firefox]),
        },
      },
      {
        extends: true,
        test: {
          name: 'firefox',
          ...inBrowsers,
          ...specsOf('firefox', [
            'tests/attack/*.spec.ts',
            ...[
              'bundle',
              'card-covers',
              'card-frame',
              'card',
              'desk',
              'dynamic-pages',
              'firefox',
              'hostile-pages',
              'overlay',
              'page-kinds',
              'panel',
              'picture',
              'private-marks',
              'real-web',
              'scope',
              'sweep',
            ].map((name) => `tests/e2e/${name}.spec.ts`),
          ]),
          env: { TEST_BROWSER: 'firefox' },
        },
      },
    ],
  },
});
