/** What a word is to a reader who looks for a place to breathe. */
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

const CLASSES: Readonly<Partial<Record<PhraseClass, string>>> = {
  determiner:
    'a an the my your his her its our their this these those every each some any no another both all one two three four five six ten many',
  subject: 'i he she we they you it nobody everyone everybody someone somebody nothing there',
  object: 'me him us them',
  preposition:
    'in on at by with from into onto of to for under over through near behind across along round around up down off out back away ' +
    'about like beside between above below past inside outside without against among towards during',
  joiner: 'and or but nor',
  clause:
    'because when while if before after until till since although though unless where as than whenever once why how then',
  relative: 'who which that whose',
  helper:
    "is are was were am be been being has have had do does did will would can could may might must shall should don't didn't " +
    "doesn't isn't wasn't aren't weren't can't couldn't won't wouldn't hadn't hasn't haven't",
  // Forms without -ed that are met in every story; those that are nouns as often (cut, ring) are not here.
  verb:
    'went go goes ran came come comes sat sits put puts took takes gave gives told tells made makes said says saw sees got gets ' +
    'flew flies swam swims fell falls held holds left lost knew knows thinks thought felt found began ate eats drank sang ' +
    'threw wrote swept slept kept met led stood broke brought bought caught grew drew drove rode shook spoke stole woke wore ' +
    'smelt hit hid sank sprang stuck swung wants needs likes works carries lives looks let asks tries sells swim run sit think know want',
  degree: 'very too so more most not quite just never',
};

const classes = new Map(
  Object.entries(CLASSES).flatMap(([name, words]) =>
    words.split(' ').map((word) => [word, name as PhraseClass] as const),
  ),
);

/** Those that end a verb as often as they begin a phrase: sat down, put on. */
const PARTICLES = new Set('up down off on out in over round back away'.split(' '));
/** Verbs that make one idea with what follows: took off his hat; not sat on his hat. */
const PHRASAL =
  /^(?:(?:put|puts|try|tried) on|(?:take|takes|took) off|(?:pick|lift|wake|wrap|dig|fill|tie|wind)\w* up|(?:turn|switch)\w* (?:on|off)|(?:look|point|smile|shout|laugh|stare)\w* (?:at|for)|(?:fish|find|work)\w* out|listen\w* to|wait\w* for)$/;
/** Verbs before to and another verb: wanted to catch; not stopped | to look. */
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

/** The class of a word as it is written, without its marks; `first` where a capital says nothing. */
export function phraseClass(shown: string, first = false): PhraseClass {
  const word = shown.toLowerCase().replaceAll('’', "'");
  const known = classes.get(word) ?? classes.get(word.replace(/'(?:s|m|re|ve|ll|d)$/, ''));
  if (known) return known;
  if (!first && /^\p{Lu}/u.test(shown)) return 'name';
  return /..ed$/.test(word) ? 'verb' : 'other';
}
