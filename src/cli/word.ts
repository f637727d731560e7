import { parseArgs } from 'node:util';
import { describeWord } from './describe-word.ts';
import { loadEngine } from './load-engine.ts';
import { readText } from './read-file.ts';
import { calledAs, InputError, runCommand } from './run-command.ts';
import { openTerminal } from './terminal.ts';

const usage = `Usage: ${calledAs('word')} [--json] WORD…   (- reads words from stdin)`;

await runCommand(usage, () => {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: { json: { type: 'boolean', default: false }, british: { type: 'boolean', default: false } },
  });
  const words = positionals
    .flatMap((word) => (word === '-' ? readText('-').split(/\s+/) : word))
    .filter((word) => word !== '');
  if (words.length === 0) throw new InputError(`No word given.\n${usage}`);
  const american = loadEngine();
  const engine = values.british ? american.speaking({ accent: 'british', bath: 'father' }) : american;
  const analyses = words.map((word) => ({ word, readings: engine.analyze(word).readings }));
  if (values.json) return `[\n${analyses.map((analysis) => JSON.stringify(analysis)).join(',\n')}\n]`;
  const terminal = openTerminal();
  return analyses.map(({ word, readings }) => describeWord(word, readings, terminal)).join('\n\n');
});
