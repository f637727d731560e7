/** 2026-11-25T08:00Z is 25 November 2026; anything else stays as it is. */
export function writePageDate(date: string | null): string | null {
  const time = date === null ? Number.NaN : Date.parse(date);
  if (Number.isNaN(time)) return date;
  return new Intl.DateTimeFormat('en-GB', { dateStyle: 'long', timeZone: 'UTC' }).format(time);
}
