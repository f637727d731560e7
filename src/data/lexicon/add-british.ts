import { listSpellings } from '../../variety/index.ts';

/** Matches organize and its derivatives: organizer, organization, recognizable, unorganized. */
const WITH_Z = /^((?:un)?([a-z]{3,}i))z(e|ed|er|ation|able)$/;

type Pronunciations = Map<string, readonly (readonly string[])[]>;

/**
 * Adds British spellings that the dictionary lacks, with the pronunciation of the American form. They are the spellings of
 * the table of varieties (flavour, litre), and the forms in -ise of verbs in -ize (organise, organisation; not the name
 * altizer). Inflected forms are built when a text has them.
 */
export function addBritish(pronunciations: Pronunciations): void {
  const pairs = listSpellings().map(({ british, american }): [string, string] => [british, american]);
  for (const american of [...pronunciations.keys()]) {
    const [, before, verb, ending] = WITH_Z.exec(american) ?? [];
    if (pronunciations.has(`${verb}ze`)) pairs.push([`${before}s${ending}`, american]);
  }
  for (const [british, american] of pairs) {
    const phones = pronunciations.get(american);
    if (phones && !pronunciations.has(british)) pronunciations.set(british, phones);
  }
}
