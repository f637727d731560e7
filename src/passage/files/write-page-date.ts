/** Writes a date in its long form: 2026-11-25T08:00Z becomes 25 November 2026. Returns any other text unchanged. */
export function writePageDate(date: string | null): string | null {
  const time = date === null ? Number.NaN : Date.parse(date);
  if (Number.isNaN(time)) return date;
  return new Intl.DateTimeFormat('en-GB', { dateStyle: 'long', timeZone: 'UTC' }).format(time);
}
