import { writtenLanguage } from '../wording/say.ts';

/** The style of a written day: `25 November 2026`, or `25 Nov 2026`. */
export type DayStyle = 'long' | 'medium';

/**
 * Returns a day in the reader's language, from its time in milliseconds. UTC is for the time of a day that does not
 * depend on a place.
 */
export function sayDay(time: number, style: DayStyle = 'long', timeZone?: 'UTC'): string {
  return new Intl.DateTimeFormat(writtenLanguage(), {
    day: 'numeric',
    month: style === 'long' ? 'long' : 'short',
    year: 'numeric',
    ...(timeZone && { timeZone }),
  }).format(time);
}
