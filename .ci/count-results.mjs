// Says what failed in a run of .ci/run and ends with the line of counts. The arguments are how its two test commands ended; the reports are in .output.
import { existsSync, readFileSync } from 'node:fs';

const runs = ['tests', 'tests-browsers'].map((name, i) => ({
  name,
  ended: process.argv[2 + i],
  report: JSON.parse(readFileSync(`.output/${name}.json`, 'utf8')),
}));
const passed = runs.reduce((sum, { report }) => sum + report.numPassedTests, 0);
const testResults = runs.flatMap(({ report }) => report.testResults);
let failed = 0;
for (const { name, message, assertionResults } of testResults) {
  for (const { status, fullName, failureMessages } of assertionResults) {
    if (failureMessages.length === 0) continue;
    const outcome = status === 'passed' ? 'SECOND TRY' : 'FAILED';
    console.log(`${outcome} ${name}: ${fullName}\n${failureMessages.join('\n')}`);
  }
  if (message) console.log(`FAILED ${name}: ${message}`);
}
for (const { name, ended, report } of runs) {
  failed += report.numFailedTests;
  if (report.numFailedTests > 0 || (report.success && ended === '0')) continue;
  // Vitest ends with 1 for an error outside every test, which no count of its report holds.
  failed++;
  const printed = readFileSync(`.output/${name}.txt`, 'utf8');
  const errors = printed.indexOf('Unhandled Errors');
  console.log(
    `FAILED the command of ${name} ended with ${ended}, though no test failed:\n${printed.slice(errors < 0 ? -3000 : errors)}`,
  );
}
if (existsSync('.output/sweeps-failed.txt')) {
  const sweeps = readFileSync('.output/sweeps-failed.txt', 'utf8');
  console.log(sweeps);
  failed += sweeps.match(/^FAILED /gm).length;
}
const seconds = testResults
  .map(({ name, startTime, endTime }) => [
    Math.round((endTime - startTime) / 1000),
    name.replace(/.*\/tests\//, ''),
  ])
  .sort(([a], [b]) => b - a);
console.log(
  `slowest files, s: ${seconds
    .slice(0, 20)
    .map(([time, name]) => `${name} ${time}`)
    .join(', ')}`,
);
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);
