import type { VetOptions } from './read-vet-options.ts';
import type { ReportWriter } from './report-writer.ts';
import { openTerminal } from './terminal.ts';
import type { VettedGroup } from './text-record.ts';
import { createCsvWriter } from './write-csv.ts';
import { createHtmlWriter } from './write-html.ts';
import { createJsonWriter } from './write-json.ts';
import { createTableWriter } from './write-table.ts';

/** Returns the writer for an `--out` format. */
export function openWriter(
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
