import type { ReportWriter } from './report-writer.ts';
import type { Terminal } from './terminal.ts';
import type { GroupReport } from './text-record.ts';

/** Writes a line for each text and group, for reading in a terminal. The text comes last because its name may be long. */
export function createTableWriter(groups: readonly string[], terminal: Terminal): ReportWriter {
  const width = Math.max('Group'.length, ...groups.map(({ length }) => length));
  const set = (reach: string, at95: string, at99: string, words: string, group: string): string =>
    `${reach.padStart(8)}  ${at95.padStart(5)}  ${at99.padStart(5)}  ${words.padStart(8)}  ${group.padEnd(width)}  `;
  const figures = ({ group, tally, reaches95, reaches99 }: GroupReport): string =>
    set(
      tally.reach === null ? '–' : `${tally.reach.toFixed(1)}%`,
      String(reaches95 ?? '–'),
      String(reaches99 ?? '–'),
      String(tally.running + tally.names),
      group,
    );
  return {
    head: () => `${terminal.accent(`${set('Readable', '95 at', '99 at', 'Words', 'Group')}Text`)}\n`,
    row: (record) =>
      'error' in record
        ? `${set('–', '', '', '', '')}${record.text}\n`
        : record.reports.map((report) => `${figures(report)}${record.text}\n`).join(''),
    between: '',
    foot: () =>
      `${terminal.dim(
        '95 at, 99 at: the step of the sequence at which that much of the text is readable.\n' +
          'An estimate of which words are decodable. The teacher decides.',
      )}\n`,
  };
}
