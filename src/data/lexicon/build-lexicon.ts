import { gatherSources } from './gather-sources.ts';
import { makeRecords } from './make-records.ts';
import { writeTable } from './write-table.ts';

export interface BuiltLexicon {
  readonly bytes: Uint8Array;
  readonly words: number;
  /** Headwords that could not be aligned: mostly abbreviations. */
  readonly left: number;
}

/** From the packages to the word table: clean, derive, learn, align, compose, write. Takes some seconds. */
export function buildLexicon(onStep: (step: string) => void): BuiltLexicon {
  const sources = gatherSources(onStep);
  onStep('aligning words');
  const records = makeRecords(sources);
  return {
    bytes: writeTable(records, sources.usageOf),
    words: records.size,
    left: sources.pronunciations.size - records.size,
  };
}
