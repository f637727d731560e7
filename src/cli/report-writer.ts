import type { VetOptions } from './read-vet-options.ts';
import { openTerminal } from './terminal.ts';
import type { TextRecord, VettedGroup } from './text-record.ts';
import { createCsvWriter } from './write-csv.ts';
import { createHtmlWriter } from './write-html.ts';
import { createJsonWriter } from './write-json.ts';
import { createTableWriter } from './write-table.ts';

/** Writes records one by one: `head`, a `row` for each with `between` between them, `foot`. Rows are made in many threads, so none depends on another. */
export interface ReportWriter {
  head(): string;
  row(record: TextRecord): string;
  readonly between: string;
  foot(): string;
}

/** The writer of what `--out` says. */
export function createReportWriter(
  out: NonNullable<VetOptions['out']>,
  groups: readonly VettedGroup[],
): ReportWriter {
  switch (out) {
    case 'csv':
      return createCsvWriter();
    case 'json':
      return createJsonWriter();
    case 'html':
      return createHtmlWriter(groups);
    case 'text':
      return createTableWriter(
        groups.map(({ group }) => group.name),
        openTerminal(),
      );
  }
}
