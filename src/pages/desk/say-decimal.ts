import { spokenLanguage } from '../../wording/say.ts';

/** Writes a number with a fixed number of decimal places: 95.25 with one place is 95.3, in Spanish 95,3. */
export function sayDecimal(value: number, places: number): string {
  return value.toLocaleString(spokenLanguage(), {
    minimumFractionDigits: places,
    maximumFractionDigits: places,
  });
}
