import { readCorrespondence } from '../../analyze/lexicon/read-correspondence.ts';
import type { Correspondence } from '../../analyze/lexicon/word-record.ts';
import { readSourceRows } from '../read-source-rows.ts';

/** Corrections by hand, each with its reason in the file. */
export interface HandMade {
  /** Word to pronunciations that replace CMUdict's. */
  readonly pronunciations: ReadonlyMap<string, readonly (readonly string[])[]>;
  /** Word to units that replace the aligned ones. */
  readonly units: ReadonlyMap<string, readonly Correspondence[]>;
  /** Word to the pronunciations of the different words it is: lead, lead. */
  readonly homographs: ReadonlyMap<string, readonly (readonly string[])[]>;
}

/** Reads pronunciations.tsv, units.tsv and homographs.tsv of src/data/source; throws at a phone that CMUdict does not have. */
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
