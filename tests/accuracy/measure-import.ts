/**
 * Measures how accurate the importer is on annotated sequences: `npx tsx tests/accuracy/measure-import.ts FOLDER
 * [--misses]`. Prints the share of clauses that are right, asked about, guessed wrong, and wrong but sure. Also prints
 * the share of steps that are found.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { loadAnalyzer } from '../load-analyzer.ts';
import { type ScoredText, scoreSteps } from '../sequences/score-steps.ts';

const flags = process.argv.slice(2).filter((argument) => argument.startsWith('--'));
const [folder = 'tests/sequences/steps'] = process.argv
  .slice(2)
  .filter((argument) => !flags.includes(argument));
const engine = loadAnalyzer();
const files = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.txt'))
  .sort();
const texts = files.map((file) => scoreSteps(readFileSync(`${folder}/${file}`, 'utf8'), engine));
for (const [i, text] of texts.entries()) {
  console.info(files[i]!.padEnd(30), figures([text]));
  if (flags.includes('--misses')) printMisses(text);
}
console.info('all'.padEnd(30), figures(texts));

function figures(scored: readonly ScoredText[]): string {
  const clauses = scored.flatMap((text) => text.clauses);
  const steps = scored.flatMap((text) => text.steps);
  const strays = scored.flatMap((text) => text.strays);
  const count = (verdict: string) => clauses.filter((clause) => clause.verdict === verdict).length;
  const sureStrays = strays.filter(({ status }) => status === 'matched').length;
  return [
    `clauses ${clauses.length}`,
    `right ${count('right')} (${((count('right') / Math.max(1, clauses.length)) * 100).toFixed(1)} %)`,
    `asked ${count('asked')}`,
    `wrong guess ${count('wrong guess')}`,
    `wrong but sure ${count('wrong but sure')} + ${sureStrays} outside clauses`,
    `guesses outside ${strays.length - sureStrays}`,
    `asked besides ${scored.flatMap((text) => text.askedBesides).length}`,
    `steps ${steps.filter(({ found }) => found !== null).length}/${steps.length}`,
    `titled ${steps.filter(({ titled }) => titled).length}`,
  ].join(', ');
}

function printMisses({ clauses, steps, strays, askedBesides }: ScoredText): void {
  for (const { verdict, step, text, read, meaning } of clauses)
    if (verdict !== 'right')
      console.info(`  ${verdict} [${step}] ${text}\n      read ${read}\n      not  ${meaning}`);
  for (const { title, found, titled } of steps)
    if (!titled) console.info(`  step "${title}": ${found === null ? 'not found' : `"${found}"`}`);
  for (const { text, status, patterns, bySight } of strays)
    console.info(`  stray, ${status}: ${text} = ${[...patterns, ...bySight].join(' ')}`);
  for (const { text } of askedBesides) console.info(`  asked besides: ${text}`);
}
