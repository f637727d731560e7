import type { Gap, Report, Standing, WordEntry } from '../analyze/types.ts';
import { describePattern } from './describe-pattern.ts';
import type { LoadedGroup } from './load-group.ts';
import type { Terminal } from './terminal.ts';
import { wrapLines } from './wrap-lines.ts';

/**
 * Formats a report for the terminal. The reach comes first, then the gaps, sorted by how many words they open. The
 * beyond and unsure words come last, each with its missing patterns. `source` is the name of the file.
 */
export function describeReport(
  { words, tally, gaps }: Report,
  { group, sequence }: Pick<LoadedGroup, 'group' | 'sequence'>,
  source: string,
  terminal: Terminal,
): string {
  const of = (standing: Standing) => words.filter((entry) => entry.standing === standing);
  const step = sequence?.steps[group.step - 1];
  const place =
    sequence === null ? [] : [`${sequence.name}, step ${group.step}`, ...(step?.title ? [step.title] : [])];
  const names = of('name').map(({ word, count }) => counted(word, count));
  return [
    `${terminal.bold(source)}\nfor ${[group.name, ...place].join(' · ')}`,
    describeReach(tally, terminal),
    ...section(
      'Missing patterns, and how many more words are readable if each is taught',
      describeGaps(gaps, terminal),
      terminal,
    ),
    ...section(
      'Not yet decodable',
      of('beyond').map((entry) => describeLack(entry, terminal)),
      terminal,
    ),
    ...section(
      'Unsure: more than one reading, or a guess',
      of('unsure').map((entry) => describeLack(entry, terminal)),
      terminal,
    ),
    ...section(
      'Names, not counted',
      names.length > 0 ? [wrapLines(names, terminal.width, '  ', '  ')] : [],
      terminal,
    ),
    terminal.dim('An estimate of which words are decodable. The teacher decides.'),
  ].join('\n\n');
}

function describeReach(tally: Report['tally'], { width, bold, accent, dim }: Terminal): string {
  const { running, reads, fresh, bySight, names, unsure, beyond, skipped, reach } = tally;
  if (running === 0) return `${bold('No words but names')}: ${names} names, ${skipped} skipped`;
  const bar = Math.min(40, width - 20);
  const filled = Math.round((bar * reach) / 100);
  return [
    `${bold(`${reach.toFixed(1)}% readable`)}  ${accent('█'.repeat(filled))}${dim('░'.repeat(bar - filled))}`,
    `${reads + fresh + bySight} of ${running} words: ${reads} decodable, ${fresh} practise this step, ${bySight} by-sight`,
    `${beyond} not yet decodable, ${unsure} unsure; not counted: ${names} names, ${skipped} ignored`,
  ].join('\n');
}

function describeGaps(gaps: readonly Gap[], { width, bold }: Terminal): string[] {
  const opening = gaps.filter(({ opens }) => opens > 0);
  const closed = gaps.length - opening.length;
  const rest =
    closed === 0
      ? []
      : [
          wrapLines(
            `and ${closed} more whose words also need another pattern`.split(' '),
            width,
            '      ',
            '      ',
          ),
        ];
  return [
    ...opening.map(({ pattern, opens, words }) => {
      const list = wrapLines(
        words.slice(0, WORDS_SHOWN).concat(words.length > WORDS_SHOWN ? ['…'] : []),
        width,
        '      ',
        '      ',
      );
      return `${String(opens).padStart(4)}  ${bold(describePattern(pattern))}\n${list}`;
    }),
    ...rest,
  ];
}

const WORDS_SHOWN = 24;

function describeLack({ word, count, missing }: WordEntry, { width, dim }: Terminal): string {
  const label = `  ${counted(word, count)}`;
  const first = label.length < LACK_COLUMN ? label.padEnd(LACK_COLUMN) : `${label}  `;
  const reasons = missing.map((id, i) => describePattern(id) + (i < missing.length - 1 ? ';' : ''));
  const lines = wrapLines(
    reasons.join(' ').split(' '),
    width,
    ' '.repeat(first.length),
    ' '.repeat(LACK_COLUMN),
  );
  return first + dim(lines.slice(first.length));
}

const LACK_COLUMN = 20;

function counted(word: string, count: number): string {
  return count === 1 ? word : `${word} ×${count}`;
}

function section(title: string, lines: readonly string[], { accent }: Terminal): string[] {
  return lines.length === 0 ? [] : [`${accent(title)}\n${lines.join('\n')}`];
}
