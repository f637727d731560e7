import { analysedAs } from '../homographs/word-key.ts';
import type { FineNeeds, MadeOf, PatternId, Reading, WordAnalysis, WordKey } from '../types.ts';

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

/** Returns the data of a word on which standings depend. Each word is analysed once, with whatever capitals it is met. */
export function weighOnce(analyzer: { analyze(key: WordKey): Weighable }): (key: WordKey) => WeighedWord {
  const known = new Map<WordKey, WeighedWord>();
  return (key) => {
    const small = analysedAs(key);
    const before = known.get(small);
    if (before) return before;
    const weighed = weighWord(analyzer.analyze(key));
    known.set(small, weighed);
    return weighed;
  };
}
