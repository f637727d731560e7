/**
 * The days after which an item comes back: one day, three days, one week, two weeks, a month. Expanding intervals:
 * common practice, no source.
 */
const INTERVALS = [1, 3, 7, 14, 30];
const DAY = 86_400_000;

/** An item of earlier sheets that is to come back. */
export interface Due {
  readonly item: string;
  /** The days since the item was last on a sheet. */
  readonly days: number;
  /** The days by which the item is late; 0 on the due day itself. */
  readonly late: number;
}

/**
 * Returns the items that are due again on a day. The interval depends on how often an item was met, and starts when it
 * was last met. An item met once is due after a day. An item met twice is due three days after the second time. The
 * item that is latest for its interval comes first.
 */
export function findDue(
  sheets: readonly { readonly day: string; readonly items: readonly string[] }[],
  day: string,
): Due[] {
  return [...lastMet(sheets, day)]
    .map(([item, { times, days }]) => {
      const interval = INTERVALS[Math.min(times, INTERVALS.length) - 1]!;
      return { item, days, late: days - interval, share: days / interval };
    })
    .filter(({ late }) => late >= 0)
    .sort((a, b) => b.share - a.share || (a.item < b.item ? -1 : 1))
    .map(({ item, days, late }) => ({ item, days, late }));
}

/** Returns how often each item was met before a day, and how many days ago it was last met. */
export function lastMet(
  sheets: readonly { readonly day: string; readonly items: readonly string[] }[],
  day: string,
): Map<string, { readonly times: number; readonly days: number }> {
  const met = new Map<string, { times: number; days: number }>();
  for (const sheet of sheets) {
    const days = Math.round((Date.parse(day) - Date.parse(sheet.day)) / DAY);
    // Items on today's sheets are not due. A sheet may also be dated after the day.
    if (!(days > 0)) continue;
    for (const item of new Set(sheet.items)) {
      const before = met.get(item);
      met.set(item, { times: (before?.times ?? 0) + 1, days: Math.min(before?.days ?? days, days) });
    }
  }
  return met;
}
