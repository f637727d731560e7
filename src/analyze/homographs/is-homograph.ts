/**
 * Words whose reading is chosen by rules or weights. A test keeps the list in step with both. The list is separate from
 * the weights, so that a web page can tell which words to ask about without loading the weights.
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

/** The homographs with their -s forms. */
const known = new Set(HOMOGRAPHS.flatMap((word) => [word, `${word}s`]));

/**
 * True if the reading of a word may depend on its place: read, Read and records, but not red. The check is cheap, for
 * use on every word of a text.
 */
export function isHomograph(word: string): boolean {
  return known.has(word) || (word < 'a' && known.has(word.toLowerCase()));
}
