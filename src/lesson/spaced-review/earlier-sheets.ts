import type { PatternId } from '../../analyze/types.ts';

/** The words and patterns on the sheets of one day. */
export interface EarlierSheet {
  /** `2026-11-25`. */
  readonly day: string;
  /** The patterns of the day's lesson. */
  readonly patterns: readonly PatternId[];
  readonly words: readonly string[];
  readonly bySight: readonly string[];
}

/** The number of sheets that are kept: a school year of lessons. Older sheets are removed. */
const MOST_SHEETS = 200;
const MOST_WORDS = 120;

/** Returns the earlier sheets with one more. The sheets of a day are joined to one. */
export function addSheet(earlier: readonly EarlierSheet[], sheet: EarlierSheet): EarlierSheet[] {
  const same = earlier.find(({ day }) => day === sheet.day);
  const join = (a: readonly string[] = [], b: readonly string[]): string[] => [...new Set([...a, ...b])];
  const joined: EarlierSheet = {
    day: sheet.day,
    patterns: join(same?.patterns, sheet.patterns),
    words: join(same?.words, sheet.words).slice(0, MOST_WORDS),
    bySight: join(same?.bySight, sheet.bySight).slice(0, MOST_WORDS),
  };
  return [...earlier.filter((each) => each !== same), joined]
    .sort((a, b) => (a.day < b.day ? -1 : 1))
    .slice(-MOST_SHEETS);
}

/** Reads stored sheets as far as they are valid. Any value may be given. */
export function parseSheets(kept: unknown): EarlierSheet[] {
  if (!Array.isArray(kept)) return [];
  const texts = (value: unknown): string[] =>
    Array.isArray(value) ? value.filter((each) => typeof each === 'string') : [];
  return kept.flatMap((sheet: unknown) => {
    if (typeof sheet !== 'object' || sheet === null) return [];
    const { day, patterns, words, bySight } = sheet as Record<string, unknown>;
    if (typeof day !== 'string' || !/^\d{4}-\d\d-\d\d$/.test(day)) return [];
    return [{ day, patterns: texts(patterns), words: texts(words), bySight: texts(bySight) }];
  });
}
