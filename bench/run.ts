import { parseArgs } from 'node:util';
import { compareWith } from './compare.ts';
import { type Figure, keepsBar, spreadOf } from './figure.ts';
import { lookAtOthers, QUIET } from './quiet.ts';
import { SECTIONS } from './sections.ts';

/**
 * Measures speed as ratios, so that one machine can be compared with another. Each line is the median of five runs with
 * their spread. A run during which the machine did other work is reported, and no bar is checked for that run.
 *
 * `--only WORD` runs the sections whose names contain the word. `--runs N` sets the number of runs. `--compare REF`
 * runs this tree and another commit in turn and prints the ratio of the two. `--json` prints the figures of one run for
 * this comparison.
 */
const { values } = parseArgs({
  options: {
    only: { type: 'string', default: '' },
    runs: { type: 'string', default: '5' },
    compare: { type: 'string' },
    json: { type: 'boolean', default: false },
  },
});
const sections = SECTIONS.filter(({ name }) => name.includes(values.only));
if (sections.length === 0) throw new Error(`There are ${SECTIONS.map(({ name }) => name).join(', ')}.`);

if (values.compare !== undefined) {
  await compareWith(values.compare, sections, Number(values.runs));
} else if (values.json) {
  const figures: Figure[] = [];
  for (const section of sections) figures.push(...(await section.measure()));
  console.log(JSON.stringify(figures));
} else {
  for (const section of sections) {
    const runs: Figure[][] = [];
    let busiest = 0;
    for (let run = 0; run < Number(values.runs); run++) {
      busiest = Math.max(busiest, await lookAtOthers());
      runs.push(await section.measure());
    }
    const isQuiet = busiest <= QUIET;
    if (!isQuiet)
      console.log(`  not quiet: others took up to ${Math.round(busiest * 100)}% of the machine meanwhile`);
    for (const { figure, least, most } of spreadOf(runs)) {
      const keeps = keepsBar(figure);
      const verdict = keeps === null ? '' : !isQuiet ? '  not judged' : keeps ? '' : '  OVER THE BAR';
      if (isQuiet && keeps === false) process.exitCode = 1;
      console.log(
        `${figure.what.padEnd(56)} ${short(figure.ratio).padStart(8)}  ${`${short(least)} to ${short(most)}`.padStart(16)}   ${figure.note}${verdict}`,
      );
    }
  }
}

function short(ratio: number): string {
  return String(Math.round(ratio * 1000) / 1000);
}
