import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { startVitest, type TestCase } from 'vitest/node';
import { attacks } from './attacks.ts';

/**
 * `npm run attack [-- --kills N] [WORD]`: tries every attack on what was built, in each browser that its tests run in, and prints what held;
 * only those with a word in what they try, where one is given. Ends with 1 where something did not hold.
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
const counts = new Map<string, { held: number; broken: number }>();

function report(attempt: TestCase): void {
  const { project, module, fullName } = attempt;
  const { state } = attempt.result();
  if (state === 'skipped') return;
  const place = module.moduleId.slice(root.length);
  const { what } = wanted.find(({ tries }) => tries.includes(place)) ?? { what: place };
  const where = `${what} (${project.name === 'e2e' ? 'chromium' : project.name})`;
  const count = counts.get(where) ?? { held: 0, broken: 0 };
  count[state === 'passed' ? 'held' : 'broken']++;
  counts.set(where, count);
  console.log(`${state === 'passed' ? 'held    ' : 'NOT HELD'}  ${where}: ${fullName}`);
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
console.log('');
for (const [where, { held, broken }] of counts)
  console.log(`${String(held).padStart(4)} held, ${String(broken).padStart(2)} not  ${where}`);
for (const error of run.state.getUnhandledErrors()) console.error(error);
await run.close();
