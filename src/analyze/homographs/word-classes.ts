import smallWords from './word-classes.json' with { type: 'json' };

/** Small words, classed by the words that can come before or after them. Each word is in one class. */
const classes = new Map(
  Object.entries(smallWords).flatMap(([name, words]) => words.map((word) => [word, name] as const)),
);

/** Endings that usually show a word's part of speech: quickly, mended, mending, tidal; not fly, red. */
const ENDINGS: readonly (readonly [RegExp, string])[] = [
  [/'ll$|'d$/, 'modal'],
  [/'ve$/, 'has'],
  [/'re$|'m$/, 'is'],
  [/n't$/, 'modal'],
  [/(?:'s|s')$/, 'owner'],
  [/^\d/, 'number'],
  [/..ly$/, 'ly'],
  [/..ed$/, 'ed'],
  [/...ing$/, 'ing'],
  [/..(?:tion|sion|ment|ness|ity|ance|ence|ship|ism)s?$/, 'noun'],
  [/..(?:al|ic|ous|ful|less|ive|able|ible|ary|ish|ern|est)$/, 'adjective'],
  [/..(?:er|or|ist)s?$/, 'doer'],
  [/..[^su]s$|men$/, 's'],
];

/** The parts of speech that an ending gives to an unlisted word: mended is a past or a participle, kindness a noun. */
export const PART_BY_ENDING: Readonly<Record<string, string>> = {
  s: 'N',
  ing: 'g',
  noun: 'n',
  adjective: 'a',
  doer: 'n',
  ly: 'r',
  often: 'r',
  ed: 'de',
};

/**
 * Returns the class of a piece of a context: `edge` at or beyond the end of the sentence, `mark` for other punctuation,
 * the class of a listed small word, `name` for another word with a capital (unless it ends in an owner's s), the class
 * that the ending shows, or `other`.
 */
export function classOf(piece: string | undefined, first = false): string {
  if (piece === undefined) return 'edge';
  if (!/[\p{L}\p{N}]/u.test(piece)) return /[.!?;\n]/.test(piece) ? 'edge' : 'mark';
  const word = piece.toLowerCase();
  const known = classes.get(word);
  if (known) return known;
  const ending = ENDINGS.find(([sign]) => sign.test(word))?.[1];
  if (!first && /^\p{Lu}/u.test(piece) && ending !== 'owner') return 'name';
  return ending ?? 'other';
}
