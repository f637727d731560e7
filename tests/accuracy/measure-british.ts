import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { readFrequency } from '../../src/data/read-frequency.ts';
import { loadAnalyzer, loadLexicon } from '../load-analyzer.ts';
import { readBritfone, scoreBritish } from './score-british.ts';

/**
 * Prints how many words have the same British reading as in Britfone (MIT, J. Llarena): `npx tsx
 * tests/accuracy/measure-british.ts FOLDER`. There is one figure for each file `britfone*.tsv` of the folder.
 * `--misses` lists the other words, with * before a common word.
 */
const { positionals, values } = parseArgs({
  allowPositionals: true,
  options: { misses: { type: 'boolean', default: false } },
});
const folder = positionals[0] ?? '../shared/data';
const british = loadAnalyzer().speaking({ accent: 'british', bath: 'father' });
const lexicon = loadLexicon();
const rank = readFrequency();
for (const file of readdirSync(folder).filter((name) => /^britfone.*\.tsv$/.test(name))) {
  const { words, right, common, rightCommon, wrong } = scoreBritish(
    readBritfone(readFileSync(join(folder, file), 'utf8')),
    british,
    (word) => lexicon.find(word) !== null,
    rank,
  );
  const percent = (part: number, of: number): string => `${((100 * part) / of).toFixed(1)}%`;
  console.log(
    `${file}: ${percent(rightCommon, common)} of the ${common} commonest words in both, ${percent(right, words)} of all ${words}`,
  );
  if (values.misses) console.log(wrong.join('\n'));
}
