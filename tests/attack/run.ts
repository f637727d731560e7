import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { startVitest, type TestCase } from 'vitest/node';
import { attacks } from './attacks.ts';

/**
 * `npm run attack [-- --kills N] [WORD]`: tries every attack on the built extension, in each browser that its tests run
 * in, and prints which attacks were withstood. With a WORD, only attacks that contain it in their description or test
 * files are tried. Ends with 1 if an attack succeeded.
 */
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { kills: { type: 'string', default: '100' } },
});
process.env.KILLS = values.kills;
const wanted = attacks.filter(({ what, tries }) =>
  positionals.every((word) => `${what} ${tries.join(' ')}`.includes(word)),
);
if (wanted.length === 0) {
  console.error(`No attack has ${positionals.join(' ')} in its name. Leave the word out to try all.`);
  process.exit(2);
}

const root = fileURLToPath(new URL('../..', import.meta.url));
/** The places where an attack is tried: a browser, or no browser. */
const PLACES = { e2e: 'Chromium', firefox: 'Firefox' } as const;
const places = [...Object.values(PLACES), 'no browser'] as const;
type Place = (typeof places)[number];
const counts = new Map(
  wanted.map(({ what }) => [what, new Map<Place, { held: number; broken: number }>()] as const),
);

function report(attempt: TestCase): void {
  const { project, module, fullName } = attempt;
  const { state } = attempt.result();
  if (state === 'skipped') return;
  const file = module.moduleId.slice(root.length);
  const { what } = wanted.find(({ tries }) => tries.includes(file))!;
  const place = PLACES[project.name as keyof typeof PLACES] ?? 'no browser';
  const count = counts.get(what)!.get(place) ?? { held: 0, broken: 0 };
  count[state === 'passed' ? 'held' : 'broken']++;
  counts.get(what)!.set(place, count);
  console.log(`${state === 'passed' ? 'held    ' : 'NOT HELD'}  ${what} (${place}): ${fullName}`);
}

const run = await startVitest(
  'test',
  wanted.flatMap(({ tries }) => tries),
  {
    config: 'tests/vitest.config.ts',
    root,
    watch: false,
    retry: 0,
    reporters: [{ onTestCaseResult: report }],
  },
);

const widest = Math.max(...wanted.map(({ what }) => what.length));
console.log(`\n${'attack'.padEnd(widest)}  ${places.map((place) => place.padEnd(12)).join('  ')}`);
for (const [what, tried] of counts)
  console.log(
    `${what.padEnd(widest)}  ${places.map((place) => sayHeld(tried.get(place)).padEnd(12)).join('  ')}`,
  );
for (const error of run.state.getUnhandledErrors()) console.error(error);
await run.close();

function sayHeld(count: { held: number; broken: number } | undefined): string {
  if (!count) return '-';
  return count.broken === 0 ? `${count.held} held` : `${count.held} held, ${count.broken} NOT`;
}
