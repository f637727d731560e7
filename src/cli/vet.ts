import { basename } from 'node:path';
import { parseArgs } from 'node:util';
import { createJudge, vet } from '../analyze/index.ts';
import { countWords } from './count-words.ts';
import { describeReport } from './describe-report.ts';
import { loadEngine } from './load-engine.ts';
import { loadGroup } from './load-group.ts';
import { readText } from './read-file.ts';
import { InputError, runCommand } from './run-command.ts';
import { openTerminal } from './terminal.ts';

const usage = 'Usage: npm run --silent vet -- --group GROUPFILE [--json] TEXTFILE|HTMLFILE|-';

await runCommand(usage, async () => {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: { json: { type: 'boolean', default: false }, group: { type: 'string' } },
  });
  const [source, ...others] = positionals;
  if (values.group === undefined) throw new InputError(`No group given.\n${usage}`);
  if (source === undefined || others.length > 0) throw new InputError(`Give one text to vet.\n${usage}`);
  const loaded = loadGroup(values.group);
  const content = readText(source);
  const counts = countWords(isHtml(source, content) ? await textOf(content) : content);
  const report = vet(counts, createJudge(loadEngine(), loaded.compiled));
  if (values.json) return JSON.stringify(report, null, 2);
  return describeReport(report, loaded, source === '-' ? 'stdin' : basename(source), openTerminal());
});

/** The parser takes longer to load than most texts to vet, so only pages wait for it. */
async function textOf(html: string): Promise<string> {
  const { readHtml } = await import('./read-html.ts');
  return readHtml(html);
}

/** By its name, or by how it begins when it comes through stdin. */
function isHtml(source: string, content: string): boolean {
  return /\.x?html?$/i.test(source) || /^\s*(<!doctype html|<html)/i.test(content);
}
