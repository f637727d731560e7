/** A piece that no page's end breaks: a line of text, a heading, a story word. Lengths in one unit, downwards. */
export interface PageRow {
  /** Where a page that begins with it begins. */
  readonly top: number;
  readonly bottom: number;
  /** Does not stand alone at a page's end: a heading, the first line of a paragraph. */
  readonly holdsNext: boolean;
}

/**
 * Which rows begin pages that have so much room, from the first; none where there are no rows. A row that is higher than a
 * page has one for itself, and rows that hold each other over more than a page are broken where the room ends.
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
