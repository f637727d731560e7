/**
 * Returns the page numbers written as in a print dialog: "1-3, 5" gives 1, 2, 3 and 5. Returns null if the input cannot
 * be read, or if a part names none of the `count` pages. Returns all pages if the input is empty.
 */
export function parsePages(written: string, count: number): ReadonlySet<number> | null {
  const pages = new Set<number>();
  const parts = written
    .replace(/\s*[-–]\s*/g, '-')
    .split(/[,;\s]+/)
    .filter((part) => part !== '');
  for (const part of parts) {
    const range = /^(\d{1,4})(?:-(\d{1,4}))?$/.exec(part);
    if (!range) return null;
    const from = Number(range[1]);
    const to = Number(range[2] ?? range[1]);
    if (from < 1 || to < from || from > count) return null;
    for (let page = from; page <= Math.min(to, count); page++) pages.add(page);
  }
  if (parts.length === 0) for (let page = 1; page <= count; page++) pages.add(page);
  return pages;
}
