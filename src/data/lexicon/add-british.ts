import { listSpellings } from '../../variety/index.ts';

/** organize and its derivatives: organizer, organization, recognizable, unorganized. */
const WITH_Z = /^((?:un)?([a-z]{3,}i))z(e|ed|er|ation|able)$/;

type Pronunciations = Map<string, readonly (readonly string[])[]>;

/**
 * Gives British spellings the dictionary lacks the pronunciation of their American form: the spellings of
 * the table of varieties (flavour, litre), and an s for the z of every -ize (organise, organisation; not altizer, a
 * name). Their inflected forms are put together when they are met.
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
