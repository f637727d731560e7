import type { ReportWriter } from './report-writer.ts';

/** Writes one JSON array with one record on each line. */
export function createJsonWriter(): ReportWriter {
  return {
    head: () => '[',
    row: (record) => `\n${JSON.stringify(record)}`,
    between: ',',
    foot: () => '\n]\n',
  };
}
