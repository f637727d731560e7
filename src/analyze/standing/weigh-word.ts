import type { FineNeeds, MadeOf, PatternId, Reading, WordAnalysis } from '../types.ts';

/** An analysis, or the part of an analysis that `weighWord` reads. */
export interface Weighable extends Pick<WordAnalysis, 'homograph' | 'usage' | 'fault'> {
  readonly readings: readonly (Pick<Reading, 'source' | 'requires'> & {
    readonly fine?: FineNeeds | null;
    readonly madeOf?: MadeOf | null;
  })[];
}

/** The data of a word that judging needs. These data are kept for every word of a page, so all other data are left out. */
export interface WeighedWord {
  readonly homograph: boolean;
  readonly usage: WordAnalysis['usage'];
  readonly readings: readonly WeighedReading[];
  readonly fault?: string;
}

export interface WeighedReading {
  readonly source: Reading['source'];
  readonly requires: readonly PatternId[];
  /** Null if the word has no finer rows. */
  readonly fine: FineNeeds | null;
  /** Null for a word that is not made of others. */
  readonly madeOf: MadeOf | null;
}

/** Reduces an analysis to the data that a standing depends on. */
export function weighWord({ homograph, usage, readings, fault }: Weighable): WeighedWord {
  return {
    homograph,
    usage,
    readings: readings.map(({ source, requires, fine = null, madeOf = null }) => ({
      source,
      requires,
      fine,
      madeOf,
    })),
    ...(fault !== undefined && { fault }),
  };
}
