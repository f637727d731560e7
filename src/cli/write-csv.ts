import type { ReportWriter } from './report-writer.ts';
import type { GroupReport } from './text-record.ts';

const GAPS_SHOWN = 5;
/** Without this mark, spreadsheets read the file in the default encoding of their country. */
const BYTE_ORDER_MARK = '\ufeff';

const figures: readonly (readonly [title: string, of: (report: GroupReport) => string | number | null])[] = [
  ['group', ({ group }) => group],
  ['sequence', ({ sequence }) => sequence],
  ['step', ({ step }) => step],
  ['words', ({ tally }) => tally.running + tally.names],
  ['running', ({ tally }) => tally.running],
  ['reach', ({ tally }) => tally.reach],
  ['reads', ({ tally }) => tally.reads],
  ['fresh', ({ tally }) => tally.fresh],
  ['by sight', ({ tally }) => tally.bySight],
  ['names', ({ tally }) => tally.names],
  ['unsure', ({ tally }) => tally.unsure],
  ['beyond', ({ tally }) => tally.beyond],
  ['skipped', ({ tally }) => tally.skipped],
  ['reaches 95 at step', ({ reaches95 }) => reaches95],
  ['reaches 99 at step', ({ reaches99 }) => reaches99],
  ['gaps and what they open', ({ gaps }) => sayGaps(gaps)],
];

/**
 * Writes a table for spreadsheets (RFC 4180, UTF-8 with a byte order mark). Each text has a line for each group. A text
 * that failed has one line.
 */
export function createCsvWriter(): ReportWriter {
  const empty = figures.map(() => null);
  return {
    head: () => BYTE_ORDER_MARK + line(['text', 'title', ...figures.map(([title]) => title), 'error']),
    row: (record) =>
      'error' in record
        ? line([record.text, null, ...empty, record.error])
        : record.reports
            .map((report) => line([record.text, record.title, ...figures.map(([, of]) => of(report)), null]))
            .join(''),
    between: '',
    foot: () => '',
  };
}

function sayGaps(gaps: GroupReport['gaps']): string {
  return gaps
    .filter(({ opens }) => opens > 0)
    .slice(0, GAPS_SHOWN)
    .map(({ label, opens }) => `${label}: ${opens}`)
    .join('; ');
}

function line(cells: readonly (string | number | null)[]): string {
  return `${cells.map(cell).join(',')}\r\n`;
}

/** Formats a cell. An apostrophe before a text that looks like a formula keeps it a text. */
function cell(value: string | number | null): string {
  if (typeof value !== 'string') return value === null ? '' : String(value);
  const safe = /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
