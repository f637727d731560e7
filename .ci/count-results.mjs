// Says what failed in a run of .ci/run and ends with the line of counts. The argument is how the test command ended; the reports are in .output.
import { existsSync, readFileSync } from 'node:fs';

const ended = process.argv[2];
const { numPassedTests, numFailedTests, success, testResults } = JSON.parse(
  readFileSync('.output/tests.json', 'utf8'),
);
let failed = numFailedTests;
for (const { name, message, assertionResults } of testResults) {
  for (const { status, fullName, failureMessages } of assertionResults) {
    if (failureMessages.length === 0) continue;
    const outcome = status === 'passed' ? 'SECOND TRY' : 'FAILED';
    console.log(`${outcome} ${name}: ${fullName}\n${failureMessages.join('\n')}`);
  }
  if (message) console.log(`FAILED ${name}: ${message}`);
}
if (failed === 0 && !success) failed++;
// Vitest ends with 1 for an error outside every test, which no count of its report holds.
if (failed === 0 && ended !== '0') {
  failed++;
  const printed = readFileSync('.output/tests.txt', 'utf8');
  const errors = printed.indexOf('Unhandled Errors');
  console.log(
    `FAILED the test command ended with ${ended}, though no test failed:\n${printed.slice(errors < 0 ? -3000 : errors)}`,
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
console.log(`${numPassedTests} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);
