/**
 * A piece of a sheet that no page break splits: a line of text, a heading or a story word. All lengths are in one unit
 * and point downwards.
 */
export interface PageRow {
  /** The top of a page that begins with this row. */
  readonly top: number;
  readonly bottom: number;
  /** Whether the row must not be the last on a page: a heading, or the first line of a paragraph. */
  readonly holdsNext: boolean;
}

/**
 * Returns the indexes of the rows that begin a page with this much room, from the first row. Returns an empty list if
 * there are no rows. A row that is higher than a page gets its own page. Rows that hold each other over more than a
 * page are broken where the room ends.
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
