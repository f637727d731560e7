import { writtenLanguage } from '../wording/say.ts';

/** How a day is written: `25 November 2026`, or `25 Nov 2026`. */
export type DayStyle = 'long' | 'medium';

/** A day in the reader's language, by its time in milliseconds; in UTC where the time is that of a day without a place. */
export function sayDay(time: number, style: DayStyle = 'long', timeZone?: 'UTC'): string {
  return new Intl.DateTimeFormat(writtenLanguage(), {
    day: 'numeric',
    month: style === 'long' ? 'long' : 'short',
    year: 'numeric',
    ...(timeZone && { timeZone }),
  }).format(time);
}
