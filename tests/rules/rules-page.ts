import { fileURLToPath } from 'node:url';
import type { RuleTable } from './rule-tables.ts';

/** The path of the page of rules. */
export const RULES_PAGE = fileURLToPath(new URL('../../src/analyze/RULES.md', import.meta.url));

/** Returns the page of rules, in Markdown. */
export function writeRulesPage(tables: readonly RuleTable[]): string {
  const head = [
    '# Rules of language',
    '',
    'Made by `npm run rules` from the lists named below; a test keeps it true. Of each list the first rule that applies counts, so a',
    'counter-example may come under an earlier rule.',
  ];
  return `${[...head, ...tables.flatMap(section)].join('\n')}\n`;
}

function section({ title, file, about, rules }: RuleTable): string[] {
  return [
    '',
    `## ${title}`,
    '',
    `${about} \`${file}\`.`,
    '',
    '| | rule | example | not |',
    '|---|---|---|---|',
    ...rules.map(
      ({ name, example, counterExample }, i) =>
        `| ${i + 1} | ${cell(name)} | ${cell(example)} | ${cell(counterExample)} |`,
    ),
  ];
}

function cell(text: string): string {
  return text.replaceAll('|', '\\|');
}
