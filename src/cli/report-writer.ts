import type { TextRecord } from './text-record.ts';

/** Writes records one by one: `head`, a `row` for each with `between` between them, `foot`. Rows are made in many threads, so none depends on another. */
export interface ReportWriter {
  head(): string;
  row(record: TextRecord): string;
  readonly between: string;
  foot(): string;
}
