import type { TextRecord } from './text-record.ts';

/**
 * Writes records one by one: `head`, then a `row` for each record with `between` between rows, then `foot`. Rows are
 * made in several threads, so no row depends on another.
 */
export interface ReportWriter {
  head(): string;
  row(record: TextRecord): string;
  readonly between: string;
  foot(): string;
}
