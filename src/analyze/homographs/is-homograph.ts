/**
 * Words for which rules or weights choose a reading; a test holds the list to them. It is kept apart from the weights, so
 * that a web page can tell which words to ask about without having them.
 */
export const HOMOGRAPHS: readonly string[] = (
  'abstract abuse abuses addict advocate affiliate aged aggregate alternate analyses animate appropriate ' +
  'approximate articulate associate attribute axes bass blessed bow bows buffet celtic close combine compact ' +
  'compound compress conduct confines conflict conglomerate conjugate conscript console consort construct ' +
  'consummate content contest contract contrast converse convert convict coordinate correlate decrease defect ' +
  'degenerate delegate deliberate desert deviate diagnoses diffuse document dove duplicate elaborate entrance ' +
  'escort estimate excuse expatriate exploit export extract fragment frequent graduate house implement increase ' +
  'increment initiate intimate invalid isolate laminate lead learned live lives minute misuse moderate moped ' +
  'mouth object ornament perfect permit polish postulate precipitate predicate present produce progress project ' +
  'protest read reading rebel record refund refuse reject resume row separate sewer sow subject subordinate ' +
  'supplement supposed suspect syndicate tear tears use used uses wind winds wound'
).split(' ');

/** With their -s forms. */
const known = new Set(HOMOGRAPHS.flatMap((word) => [word, `${word}s`]));

/** Whether a word may have a reading of its own in its place: read, Read, records; not red. Cheap, for every word of a text. */
export function isHomograph(word: string): boolean {
  return known.has(word) || (word < 'a' && known.has(word.toLowerCase()));
}
