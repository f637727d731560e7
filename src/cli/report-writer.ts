import type { TextRecord } from './text-record.ts';

/** Writes records one by one, so that no more than one is ever kept: `head`, a `row` for each, `foot`. */
export interface ReportWriter {
  head(): string;
  row(record: TextRecord): string;
  foot(): string;
}
