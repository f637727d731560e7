import { readCorrespondence } from '../../analyze/lexicon/read-correspondence.ts';
import type { Correspondence } from '../../analyze/lexicon/word-record.ts';
import { readSourceRows } from '../read-source-rows.ts';

/** Corrections made by hand. The files give the reason for each. */
export interface HandMade {
  /** Pronunciations that replace CMUdict's pronunciations, by word. */
  readonly pronunciations: ReadonlyMap<string, readonly (readonly string[])[]>;
  /** Units that replace the aligned units, by word. */
  readonly units: ReadonlyMap<string, readonly Correspondence[]>;
  /** The pronunciations of words with one spelling and several meanings, by word: lead, lead. */
  readonly homographs: ReadonlyMap<string, readonly (readonly string[])[]>;
}

/**
 * Reads pronunciations.tsv, units.tsv and homographs.tsv of src/data/source. Throws at a phone that CMUdict does not
 * have.
 */
export function readHandMade(): HandMade {
  return {
    pronunciations: readPhones('pronunciations.tsv'),
    units: new Map(
      readSourceRows('units.tsv').map(([word, units]) => [word!, units!.split(' ').map(readCorrespondence)]),
    ),
    homographs: readPhones('homographs.tsv'),
  };
}

function readPhones(file: string): Map<string, string[][]> {
  return new Map(
    readSourceRows(file).map(([word, phones]) => [word!, phones!.split(' / ').map((one) => one.split(' '))]),
  );
}
