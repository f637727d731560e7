import type { ReportWriter } from './report-writer.ts';

/** One array of JSON with a record to the line. */
export function createJsonWriter(): ReportWriter {
  let before = '[';
  return {
    head: () => '',
    row(record) {
      const row = `${before}\n${JSON.stringify(record)}`;
      before = ',';
      return row;
    },
    foot: () => `${before === '[' ? '[' : ''}\n]\n`,
  };
}
