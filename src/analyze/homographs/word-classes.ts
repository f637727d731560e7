/** Small words by what can follow or come before them; a word is in one class. */
const CLASSES: Readonly<Record<string, string>> = {
  article: 'a an the',
  pointer: 'this that these those every each some any no another either neither all both such what which',
  owner: 'my your his her its our their whose',
  subject: 'i you he she it we they who',
  object: 'me him us them himself herself itself themselves',
  modal: "will would can could may might must shall should cannot won't can't couldn't wouldn't shouldn't",
  does: "do does did don't doesn't didn't let let's please",
  to: 'to',
  is: "am is are was were be been being isn't aren't wasn't weren't",
  has: "have has had having haven't hasn't hadn't",
  of: 'of',
  at: 'in on at by for with from into onto over under through about between against during near across behind beside along around up down out off without within upon after before until till since like toward towards',
  and: 'and or nor & plus',
  but: 'but yet so then',
  when: 'when while if because as where than though although whether once why how unless',
  often:
    'not never always often also just only even still already now again soon too very quite more most less so well ever there here',
  number:
    'one two three four five six seven eight nine ten hundred thousand million first second third last next',
};

const classes = new Map(
  Object.entries(CLASSES).flatMap(([name, words]) => words.split(' ').map((word) => [word, name] as const)),
);

/** Endings that tell a word's part of speech more often than not: quickly, mended, mending, tidal; not fly, red. */
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

/** The parts of speech that an ending says of a word that is not listed: mended is a past or a participle, kindness a noun. */
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
 * The class of a piece of a context; `edge` beyond the sentence, `mark` for punctuation, `name` for a word with
 * a capital, `other` for the rest. `first` tells that a capital says nothing because the sentence starts there.
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
