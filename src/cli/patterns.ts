import { parseArgs } from 'node:util';
import { catalogue } from '../analyze/index.ts';
import { calledAs, runCommand } from './run-command.ts';
import { openTerminal } from './terminal.ts';
import { wrapLines } from './wrap-lines.ts';

const usage = `Usage: ${calledAs('patterns')} [--json]`;

await runCommand(usage, () => {
  const { values } = parseArgs({ options: { json: { type: 'boolean', default: false } } });
  if (values.json) return JSON.stringify(catalogue, null, 2);
  const { width, accent, bold } = openTerminal();
  const families = [...new Set(catalogue.map(({ family }) => family))];
  return families
    .map((family) => {
      const rows = catalogue.filter((row) => row.family === family);
      return [
        accent(family),
        ...rows.map(({ id, label, examples }) => {
          const first = `  ${id.padEnd(16)}`;
          const text = wrapLines(`${label}: ${examples.join(', ')}`.split(' '), width, first, ' '.repeat(18));
          return text.replace(id, bold(id));
        }),
      ].join('\n');
    })
    .join('\n\n');
});
