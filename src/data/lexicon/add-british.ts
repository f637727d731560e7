import { readSourceRows } from '../read-source-rows.ts';

type Pronunciations = Map<string, readonly (readonly string[])[]>;

/**
 * Gives British spellings the dictionary lacks the pronunciation of their American form: those of
 * source/british-spellings.tsv (flavour, litre), and -ise for every -ize (organise). Their inflected forms are
 * put together when they are met.
 */
export function addBritish(pronunciations: Pronunciations): void {
  const pairs = readSourceRows('british-spellings.tsv').map(([british, american]): [string, string] => [
    british!,
    american!,
  ]);
  for (const american of [...pronunciations.keys()]) {
    if (/[a-z]{3}ize$/.test(american)) pairs.push([`${american.slice(0, -2)}se`, american]);
  }
  for (const [british, american] of pairs) {
    const phones = pronunciations.get(american);
    if (phones && !pronunciations.has(british)) pronunciations.set(british, phones);
  }
}
