import { existsSync, readFileSync } from 'node:fs';
import { readSpelling } from '../../analyze/lexicon/read-spelling.ts';
import type { Spelling } from '../../analyze/lexicon/word-record.ts';

/** Corrections by hand, each with its reason in the file. */
export interface HandMade {
  /** Word to pronunciations that replace CMUdict's. */
  readonly pronunciations: ReadonlyMap<string, readonly (readonly string[])[]>;
  /** Word to units that replace the aligned ones. */
  readonly units: ReadonlyMap<string, readonly Spelling[]>;
  /** Word to the pronunciations of the different words it is: lead, lead. */
  readonly homographs: ReadonlyMap<string, readonly (readonly string[])[]>;
}

/** Reads pronunciations.tsv, units.tsv and homographs.tsv of src/data/source. */
export function readHandMade(): HandMade {
  return {
    pronunciations: new Map(
      rows('pronunciations.tsv').map(([word, phones]) => [
        word!,
        phones!.split(' / ').map((one) => one.split(' ')),
      ]),
    ),
    units: new Map(rows('units.tsv').map(([word, units]) => [word!, units!.split(' ').map(readSpelling)])),
    homographs: new Map(
      rows('homographs.tsv').map(([word, phones]) => [
        word!,
        phones!.split(' / ').map((one) => one.split(' ')),
      ]),
    ),
  };
}

function rows(file: string): string[][] {
  const path = new URL(`../source/${file}`, import.meta.url);
  if (!existsSync(path)) return [];
  const [, ...lines] = readFileSync(path, 'utf8').trimEnd().split('\n');
  return lines.map((line) => line.split('\t'));
}
