import { readSpelling } from '../../analyze/lexicon/read-spelling.ts';
import type { Spelling } from '../../analyze/lexicon/word-record.ts';
import { readSourceRows } from '../read-source-rows.ts';

/** Corrections by hand, each with its reason in the file. */
export interface HandMade {
  /** Word to pronunciations that replace CMUdict's. */
  readonly pronunciations: ReadonlyMap<string, readonly (readonly string[])[]>;
  /** Word to units that replace the aligned ones. */
  readonly units: ReadonlyMap<string, readonly Spelling[]>;
  /** Word to the pronunciations of the different words it is: lead, lead. */
  readonly homographs: ReadonlyMap<string, readonly (readonly string[])[]>;
}

/** The phones of CMUdict; a vowel has its stress behind it, 0 for none. */
const PHONE =
  /^(?:(?:AA|AE|AH|AO|AW|AY|EH|ER|EY|IH|IY|OW|OY|UH|UW)[012]|B|CH|D|DH|F|G|HH|JH|K|L|M|N|NG|P|R|S|SH|T|TH|V|W|Y|Z|ZH)$/;

/** Reads pronunciations.tsv, units.tsv and homographs.tsv of src/data/source; throws at a phone that CMUdict does not have. */
export function readHandMade(): HandMade {
  return {
    pronunciations: readPhones('pronunciations.tsv'),
    units: new Map(
      readSourceRows('units.tsv').map(([word, units]) => [word!, units!.split(' ').map(readSpelling)]),
    ),
    homographs: readPhones('homographs.tsv'),
  };
}

function readPhones(file: string): Map<string, string[][]> {
  const listed = readSourceRows(file).map(([word, phones]): [string, string[][]] => [
    word!,
    phones!.split(' / ').map((one) => one.split(' ')),
  ]);
  for (const [word, variants] of listed) {
    const wrong = variants.flat().find((phone) => !PHONE.test(phone));
    if (wrong !== undefined)
      throw new Error(
        `src/data/source/${file}, ${word}: "${wrong}" is no phone of CMUdict; a vowel has its stress behind it, as in AE1 B IY0`,
      );
  }
  return new Map(listed);
}
