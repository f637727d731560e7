import { readFileSync } from 'node:fs';

type Pronunciations = Map<string, readonly (readonly string[])[]>;

/**
 * Gives British spellings the dictionary lacks the pronunciation of their American form: those of
 * source/british-spellings.tsv (flavour, litre), and -ise for every -ize (organise). Their inflected forms are
 * put together when they are met.
 */
export function addBritish(pronunciations: Pronunciations): void {
  const [, ...lines] = readFileSync(new URL('../source/british-spellings.tsv', import.meta.url), 'utf8')
    .trimEnd()
    .split('\n');
  const pairs = lines.map((line) => line.split('\t') as [string, string]);
  for (const american of [...pronunciations.keys()]) {
    if (/[a-z]{3}ize$/.test(american)) pairs.push([`${american.slice(0, -2)}se`, american]);
  }
  for (const [british, american] of pairs) {
    const phones = pronunciations.get(american);
    if (phones && !pronunciations.has(british)) pronunciations.set(british, phones);
  }
}
