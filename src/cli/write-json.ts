import type { ReportWriter } from './report-writer.ts';

/** One array of JSON with a record to the line. */
export function createJsonWriter(): ReportWriter {
  return {
    head: () => '[',
    row: (record) => `\n${JSON.stringify(record)}`,
    between: ',',
    foot: () => '\n]\n',
  };
}
