import type { WordRecord } from '../../analyze/lexicon/word-record.ts';
import { listBritish } from '../accent/list-british.ts';
import { gatherSources } from './gather-sources.ts';
import { makeRecords } from './make-records.ts';
import { writeTable } from './write-table.ts';

export interface BuiltLexicon {
  readonly bytes: Uint8Array;
  /** The records that the bytes hold. */
  readonly records: ReadonlyMap<string, WordRecord>;
  /** The pronunciations that the table is made from: each word with CMUdict's phones and stress. */
  readonly pronunciations: ReadonlyMap<string, readonly (readonly string[])[]>;
  readonly words: number;
  /** The number of headwords that could not be aligned, mostly abbreviations. */
  readonly left: number;
}

/**
 * Builds the word table from the packages: clean, derive, learn, align, compose, write. Takes some seconds. Words for
 * which `keep` is false are left out.
 */
export function buildLexicon(onStep: (step: string) => void, keep?: (word: string) => boolean): BuiltLexicon {
  const sources = gatherSources(onStep, keep);
  onStep('aligning words');
  const records = makeRecords(sources);
  const lost = [...sources.handMade.pronunciations.keys()].filter(
    (word) => sources.pronunciations.has(word) && !records.has(word),
  );
  if (lost.length > 0)
    throw new Error(
      `src/data/source/pronunciations.tsv: these letters cannot stand for these sounds: ${lost.join(', ')}. Correct the sounds, or give the units in units.tsv too.`,
    );
  return {
    bytes: writeTable(records, sources.usageOf, listBritish(records, sources.pronunciations)),
    records,
    pronunciations: sources.pronunciations,
    words: records.size,
    left: sources.pronunciations.size - records.size,
  };
}
