/**
 * A piece of a sheet that no page break splits: a line of text, a heading or a story word. All positions use the same
 * unit and increase downwards.
 */
export interface PageRow {
  /** The top of a page that begins with this row. */
  readonly top: number;
  readonly bottom: number;
  /** Whether the row must not be the last on a page: a heading, or the first line of a paragraph. */
  readonly holdsNext: boolean;
}

/**
 * Returns the index of the first row of each page. `room` is the height of a page. Returns an empty list if there are
 * no rows. A row that is higher than a page gets its own page. If rows that must stay together are higher than a page,
 * the page break falls where the page is full.
 */
export function cutPages(rows: readonly PageRow[], room: number): number[] {
  const starts: number[] = [];
  for (let n = 0; n < rows.length; n++) {
    const start = starts.at(-1);
    if (start !== undefined && rows[n]!.bottom - rows[start]!.top <= room) continue;
    let at = n;
    if (start !== undefined) {
      while (at > start && rows[at - 1]!.holdsNext) at--;
      if (at === start) at = n;
    }
    starts.push(at);
    n = at;
  }
  return starts;
}
