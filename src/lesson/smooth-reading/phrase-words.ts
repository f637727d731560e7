import listed from './phrase-words.json' with { type: 'json' };

/** The class of a word for a reader who looks for a place to breathe. */
export type PhraseClass =
  | 'determiner'
  | 'subject'
  | 'object'
  | 'preposition'
  | 'joiner'
  | 'clause'
  | 'relative'
  | 'helper'
  | 'verb'
  | 'degree'
  | 'name'
  | 'other';

const classes = new Map(
  Object.entries(listed.classes).flatMap(([name, words]) =>
    words.map((word) => [word, name as PhraseClass] as const),
  ),
);

/** Particles that end a verb as often as they begin a phrase: sat down, put on. */
const PARTICLES = new Set(listed.particles);
/** Verbs that make one idea with the word after them: took off his hat; not sat on his hat. A star matches any ending. */
const PHRASAL = new RegExp(
  `^(?:${listed.phrasal
    .map((row) => `(?:${row.verbs.join('|').replaceAll('*', '\\w*')}) (?:${row.with.join('|')})`)
    .join('|')})$`,
);
/** Verbs after which `to` and another verb may follow without a break: `wanted to catch`, but not `stopped | to look`. */
const WITH_TO =
  /^(?:want|need|like|love|try|tri|tried|beg[aiu]n|start|have|has|had|going|hop(?:e|es|ed)|seem|able|used|learn|ought|got|planned)(?:s|ed|ted|ned)?$/;

export function isParticle(word: string): boolean {
  return PARTICLES.has(word);
}

export function isPhrasal(verb: string, next: string): boolean {
  return PHRASAL.test(`${verb} ${next}`);
}

export function takesTo(word: string): boolean {
  return WITH_TO.test(word);
}

/**
 * Returns the class of a word as written, without its marks. `first` is true for the first word of a sentence, where a
 * capital does not mark a name.
 */
export function phraseClass(shown: string, first = false): PhraseClass {
  const word = shown.toLowerCase().replaceAll('’', "'");
  const known = classes.get(word) ?? classes.get(word.replace(/'(?:s|m|re|ve|ll|d)$/, ''));
  if (known) return known;
  if (!first && /^\p{Lu}/u.test(shown)) return 'name';
  return /..ed$/.test(word) ? 'verb' : 'other';
}
