import { existsSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { describeOutcome, describeSweep } from './describe-sweep.ts';
import { isFailed } from './score-visit.ts';
import { sweepChromium } from './sweep-chromium.ts';
import { sweepFirefox } from './sweep-firefox.ts';
import { sweepFolder } from './sweep-folder.ts';

/**
 * `npm run sweep -- FOLDER [--firefox] [--only TEXT] [--lenient]`: presses the button of the built extension on each
 * saved page of a folder and prints the result. The exit code is 1 if a page failed, and 2 if there is no such folder.
 * With `--lenient`, a page that failed is visited a second time. Also, no page fails for its times, which depend on the
 * machine.
 */
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    firefox: { type: 'boolean', default: false },
    only: { type: 'string', default: '' },
    lenient: { type: 'boolean', default: false },
  },
});
const [folder] = positionals;
if (!folder || !existsSync(folder)) {
  console.error(`There is no folder ${folder ?? ''}. Name one with saved pages: npm run sweep -- FOLDER`);
  process.exit(2);
}
const browser = await (values.firefox ? sweepFirefox() : sweepChromium());
try {
  const outcomes = await sweepFolder(folder, browser, (outcome) => console.log(describeOutcome(outcome)), {
    isWanted: (page) => page.includes(values.only),
    isAgain: (outcome) => values.lenient && isFailed(outcome, true),
  });
  console.log(`\n${describeSweep(outcomes)}`);
  const failed = outcomes.filter((outcome) => isFailed(outcome, values.lenient));
  if (failed.length > 0) process.exitCode = 1;
} finally {
  await browser.close();
}
