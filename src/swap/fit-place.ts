import type { Piece } from './cut-words.ts';
import { inflect } from './inflect.ts';
import type { Candidate, SwapTable } from './open-swaps.ts';
import listed from './place-words.json' with { type: 'json' };
import { FOLLOWERS } from './table-format.ts';
import type { Form, WordForm } from './types.ts';
import { sharesOfForm } from './weigh-readings.ts';

/** The place of a word in a sentence, as the rules see it. */
export interface Place {
  readonly before: string;
  readonly after: string;
  /** The second word before the place. */
  readonly before2: string;
  /** The rest of the sentence, up to a punctuation mark and at most six words. */
  readonly ahead: readonly string[];
  /** Whether the next word is probably a noun, or an adjective before a noun. */
  readonly isBeforeNoun: boolean;
  /** Whether there is no article, possessive or number before the place, even with other words in between. */
  readonly isBare: boolean;
  readonly table: SwapTable;
}

interface FitRule {
  readonly name: string;
  /** Whether the rule comes from counts. Such a rule only makes a swap unsure. */
  readonly isCounted?: true;
  /** Returns true if the swap does not fit in this place. */
  readonly speaksAgainst: (reading: WordForm, candidate: Candidate, text: string, place: Place) => boolean;
}

const BE = /^(am|is|are|was|were|be|been|being|'s|'re|get|gets|got)$/;
const DETERMINER =
  /^(the|an?|this|that|these|those|my|your|his|her|its|our|their|some|any|no|every|each|another|\w+'s)$/;
const OBJECT =
  /^(the|an?|this|these|those|my|your|his|her|its|our|their|some|any|no|every|each|all|both|another|it|them|him|us|me|you|himself|herself|itself|themselves|myself|yourself|more|many|much|what|such|other|new|\d[\d.,]*|\$|"|“)$/;
const ORDER = /^(first|second|third|fourth|fifth|next|last|newly|once|\d+(st|nd|rd|th))$/;
const HAVE = /^(have|has|having|\w+'ve|(haven|hasn)'t)$/;
/** Matches degree words. The word after a degree word cannot have a degree word of its own. */
const SAYS_HOW_MUCH =
  /^(so|too|very|as|how|fairly|quite|rather|absolutely|really|truly|pretty|totally|completely|just|simply|utterly|highly|especially)$/;
const COMPARATIVE = /^(more|less|\w+er|worse|better|fewer)$/;
const ENDS =
  /^([.,;:!?)”"]|and|or|but|in|on|at|by|for|with|to|from|when|while|as|because|since|if|after|before|over|through)$/;

const SMALL = new Set(listed.small);

/** Matches adjectives that follow their noun: “the boats are alike”, not “alike boats”. */
const AFTER_NOUN =
  /^(alike|alive|asleep|afraid|awake|alone|aware|glad|sure|unable|able|ill|sorry|certain|unaware|not|worn|like|unlike|on|in|at|to|out|as)\b/;
/** Adjectives that come before their noun: “the main road”, not “the road is main”. */
const BEFORE_NOUN = new Set(listed.beforeNoun);
/** Adverbs that follow the word they describe: “ran hard”, not “hard ran”. */
const AFTER_VERB = new Set(listed.afterVerb);
/** Matches phrases that follow the word they describe: “left in a rush”, not “in a rush left”. */
const AFTER_VERB_WORDS =
  /^(in an?|in (anger|secret|the past|the same)|with|by|for|over and|again and|step by|bit by|all the time|non-stop) ?/;
/** Matches verbs that have no passive: “the letter was not gotten” and “the fair was not gone to” are wrong. */
const NOT_PASSIVE = /^(think|guess|say|look|go|come|wish|ask|stand|get|have|like|take place|find fault)\b/;
const SPEAKS_OF = /^(that|he|she|it|they|we|there|”|")$/;

/** Swaps that are right only before certain words. With `never`, a swap is wrong before those words and right elsewhere. */
const CONSTRUCTIONS: readonly {
  readonly words?: RegExp;
  readonly swaps: RegExp;
  readonly after: RegExp;
  readonly never?: true;
}[] = [
  // “decided to go” becomes “chose to go”. “decided that it rained” does not become “chose that”.
  { words: /^decide$/, swaps: /^choose$/, after: /^to$/ },
  // “claimed that” and “announced it would” become “said”. “announced the sale” does not become “said the sale”.
  {
    words:
      /^(claim|declare|announce|suggest|warn|note|argue|mention|report|insist|remark|assert|contend|predict|stress|reveal)$/,
    swaps: /^say$/,
    after: SPEAKS_OF,
  },
  { words: /^(reply|respond|comment)$/, swaps: /^say$/, after: /^(that|[.,:”"])$/ },
  // “explain how it works” becomes “tell how”. “explain the rule” does not become “tell the rule”.
  { words: /^explain$/, swaps: /^tell$/, after: /^(how|why|what|that)$/ },
  // “result in” becomes “end in”. “results from” does not become “ends from”.
  { words: /^result$/, swaps: /^end$/, after: /^in$/ },
  // “He agreed to the plan” becomes “said yes to”. “agreed with her” does not become “said yes with”.
  { words: /^agree$/, swaps: /^say yes$/, after: /^(to|[.,;!?])$/ },
  // “continued to sing” does not become “went on to sing”. That would mean the start of something else.
  { words: /^(continue|happen)$/, swaps: / (on|place)$/, after: /^to$/, never: true },
  // “Otherwise, they sink” becomes “If not, they sink”. “if not otherwise told” does not become “if not if not”.
  { words: /^otherwise$/, swaps: /^(if not|or else)$/, after: /^,$/ },
  // “chose to go” does not become “picked to go”.
  { swaps: /^pick$/, after: /^to$/, never: true },
  // “guess that it rained” becomes “think that”. “guess what” does not become “think what”.
  { words: /^guess$/, swaps: /^think$/, after: /^what$/, never: true },
  // “They need six boats” is right, but “need that there be six” is not.
  { swaps: /^(need|want)$/, after: /^that$/, never: true },
  // “It rained, actually” does not become “It rained, really”.
  { words: /^actually$/, swaps: /^really$/, after: /^[.,;!?]$/, never: true },
  // “too busy to talk” does not become “too busy to speak”.
  { words: /^talk$/, swaps: /^speak$/, after: /^(to|with|of|about|on|for|in|at)$/ },
  // “a major storm” becomes “a big storm”. “major surgery” does not become “big surgery”.
  {
    words: /^major$/,
    swaps: /^big$/,
    after: /^(depression|surgery|in|crime|league|leagues|general|black|white)$/,
    never: true,
  },
  // “a tough road” becomes “a hard road”. “tough on others” does not become “hard on others”.
  { words: /^tough$/, swaps: /^hard$/, after: /^on$/, never: true },
  // “Simply put” does not become “Just put”.
  { words: /^simply$/, swaps: /^just$/, after: /^(put|stated|said|,)$/, never: true },
  // “descended a hill” becomes “went down a hill”. “descended into war” does not become “went down into war”.
  { words: /^descend$/, swaps: /^(go|come) down$/, after: /^(into|on|upon)$/, never: true },
  // “Hurry up” does not become “Rush up”. “several times” does not become “some times”.
  { words: /^hurry$/, swaps: /^rush$/, after: /^up$/, never: true },
  { words: /^several$/, swaps: /^some$/, after: /^(times|dozen|hundred|thousand|million)$/, never: true },
  // “received a letter” becomes “got a letter”. “received him kindly” does not become “got him kindly”.
  { words: /^receive$/, swaps: /^get$/, after: /^(him|her|them|us|me|you|guests|visitors)$/, never: true },
  // “reduced the price” becomes “cut the price”. “reduced it to ruins” does not become “cut it to ruins”.
  { words: /^reduce$/, swaps: /^cut$/, after: /^(it|him|her|them|us|me|to)$/, never: true },
  // “a powerful engine” becomes “a strong engine”. “powerful friends” does not become “strong friends”.
  {
    words: /^powerful$/,
    swaps: /^strong$/,
    after: /^(friends?|people|m[ae]n|wom[ae]n|kings?|leaders?|figures?|famil(y|ies)|groups?)$/,
    never: true,
  },
  // “considered him a friend” does not become “thought of him a friend”.
  { swaps: /^think (of|about)$/, after: /^(it|him|her|them|me|us|you)$/, never: true },
  // “different from” and “different kinds” do not become “not the same from” or “not the same kinds”.
  { words: /^different$/, swaps: /^not /, after: /^[.,;!?]$/ },
];
const LINKS_ALONE = /^(but|though|and|or|while)$/;

/** Rules against a swap in its place, regardless of its meaning. The first rule that applies excludes the swap. */
const RULES: readonly FitRule[] = [
  {
    // “rose” takes no object (“rose the sail” is wrong). “raised” needs an object (“it raised” is wrong). “increased”
    // is right with or without an object.
    name: 'object',
    speaksAgainst: ({ part, form }, { object, lemma }, _text, place) => {
      if (part !== 'v' || object === null) return false;
      const has = hasObject(form, place);
      return object
        ? has === false ||
            (has === null && lemma.includes(' ')) ||
            (form === 'participle' && lemma.includes(' ') && DETERMINER.test(place.before))
        : has !== false;
    },
  },
  {
    // “more difficult” does not become “more hard”. “more useful” can become “more helpful”.
    name: 'degree',
    speaksAgainst: ({ part, form }, { lemma }, _text, { before, table }) =>
      (part === 'a' || part === 'r') &&
      form === 'base' &&
      (/^(more|most)$/.test(before) || SAYS_HOW_MUCH.test(before)) &&
      (/^(very|not|at|in|for|so|a|more|with) /.test(lemma) ||
        (/^(more|most)$/.test(before) && !/^more /.test(inflect(lemma, part, 'er', table) ?? 'more '))),
  },
  {
    // “very huge” is wrong. “an enormous wave” can become “a very big wave”, but “a very enormous wave” cannot.
    name: 'adjective before a noun',
    // A quotation mark may close between the adjective and its noun: the “rocky” steps.
    speaksAgainst: ({ part }, { lemma }, text, { isBeforeNoun, after }) =>
      part === 'a' &&
      (isBeforeNoun || /^["”’]$/.test(after)) &&
      (AFTER_NOUN.test(lemma) ||
        (/ /.test(text) && !/^(very|more|most) |^(lots of|plenty of|a few)$/.test(text))),
  },
  {
    name: 'adjective behind its noun',
    speaksAgainst: ({ part }, { lemma }, _text, { isBeforeNoun }) =>
      part === 'a' && !isBeforeNoun && BEFORE_NOUN.has(lemma),
  },
  {
    name: 'adverb behind its verb',
    speaksAgainst: ({ part }, { lemma }, _text, { after }) =>
      part === 'r' &&
      (AFTER_VERB.has(lemma) || AFTER_VERB_WORDS.test(lemma)) &&
      !ENDS.test(after) &&
      !(/^(much|a lot)$/.test(lemma) && COMPARATIVE.test(after)),
  },
  {
    // “seems” needs a complement. It can replace “appeared” in “appeared pale” and “appeared to sink”, but not in
    // “appeared on deck”.
    name: 'what it seems',
    speaksAgainst: ({ part }, { lemma }, _text, { after, table }) =>
      part === 'v' && lemma === 'seem' && after !== 'to' && (table.shares(after)?.[2] ?? 0) < 0.5,
  },
  {
    // “think” takes “that it rains” or “about it”, but not “him”.
    name: 'thinking of nobody',
    speaksAgainst: ({ part, form }, { lemma }, _text, { before, after }) =>
      part === 'v' &&
      ((/^(think|guess|say|know)$/.test(lemma) &&
        /^(him|me|us|them|her|in|the|an?|his|your|my|their|its)$/.test(after)) ||
        (form === 'participle' && BE.test(before) && NOT_PASSIVE.test(lemma))),
  },
  {
    // “He purchased it” becomes “he got it”. “he has purchased it” does not become “he has got it”, because that would
    // mean that he has it.
    name: 'got behind have',
    speaksAgainst: ({ part, form }, { lemma }, _text, { before, before2 }) =>
      part === 'v' &&
      form === 'participle' &&
      lemma === 'get' &&
      (HAVE.test(before) || (/^(already|just|never|also|not|\w+ly)$/.test(before) && HAVE.test(before2))),
  },
  {
    name: 'one construction only',
    speaksAgainst: ({ lemma: word }, { lemma }, _text, { after }) =>
      CONSTRUCTIONS.some(
        ({ words, swaps, after: follows, never = false }) =>
          (words === undefined || words.test(word)) && swaps.test(lemma) && follows.test(after) === never,
      ),
  },
  {
    // “provided them with food” does not become “gave them with food”. The right wording would be “gave them food”.
    name: 'giving with',
    speaksAgainst: ({ lemma: word }, { lemma }, _text, { ahead }) =>
      /^(provide|supply|furnish|present|issue)$/.test(word) &&
      /^give/.test(lemma) &&
      ahead.slice(0, 4).includes('with'),
  },
  {
    // “allowed the boys to go” would have to become “let the boys go”. A swap of the verb alone would leave the word
    // “to”.
    name: 'letting without to',
    speaksAgainst: ({ part }, { lemma }, _text, { ahead }) =>
      part === 'v' && /^(let|make|bring on|lead to|see)$/.test(lemma) && ahead.includes('to'),
  },
  {
    // “slightly different” becomes “a bit different”. “a slightly different one” does not become “a a bit different
    // one”.
    name: 'a bit behind an article',
    speaksAgainst: ({ part }, { lemma }, _text, { before }) =>
      part === 'r' && /^a (bit|little|lot)$/.test(lemma) && DETERMINER.test(before),
  },
  {
    // “highly unusual” does not become “highly odd”. Few words can follow “highly”.
    name: 'highly',
    speaksAgainst: (_reading, _candidate, _text, { before }) => before === 'highly',
  },
  {
    // “gathered the nets” becomes “got the nets”. “gathered herself together” does not become “got herself together”.
    name: 'what one does to oneself',
    isCounted: true,
    speaksAgainst: ({ part }, _candidate, _text, { after }) => part === 'v' && /sel(f|ves)$/.test(after),
  },
  {
    // “you are requiring them to go” does not become “you are needing them to go”.
    name: 'verbs that are never going on',
    speaksAgainst: ({ part, form }, { lemma }) =>
      part === 'v' && form === 'ing' && /^(need|know|seem|want|own|mean|belong)$/.test(lemma),
  },
  {
    // “the only road” does not become “the just road”.
    name: 'just behind an article',
    speaksAgainst: ({ part }, { lemma }, _text, { before }) =>
      part === 'r' && lemma === 'just' && DETERMINER.test(before),
  },
  {
    name: 'much before a comparison',
    speaksAgainst: ({ part }, { lemma }, _text, { after }) =>
      part === 'r' && lemma === 'much' && !COMPARATIVE.test(after),
  },
  {
    // “very good” is right, but “very have” and “very the” are not.
    name: 'very before an adjective',
    speaksAgainst: ({ part }, { lemma }, _text, { after, table }) =>
      part === 'r' &&
      lemma === 'very' &&
      (after.endsWith('ed') ||
        ((table.shares(after)?.[2] ?? 0) < 0.3 && !/ly$|^(much|often|well|fast|soon|far)$/.test(after))),
  },
  {
    // Neither “But, the boat sank” nor “the boat, but, sank” is right. A short joining word takes no comma after it.
    name: 'no comma behind a joining word',
    speaksAgainst: ({ lemma: word }, { lemma }, _text, { before, after }) =>
      (LINKS_ALONE.test(lemma) && after === ',') ||
      (word === 'however' && /^(still|yet)$/.test(lemma) && after !== ',') ||
      (/^(but|still|yet|so|and|thus)$/.test(lemma) && before === ','),
  },
  {
    // “enough” and “plenty” take the place of an article. “a sufficient amount” does not become “an enough amount”.
    name: 'no article before a quantity',
    speaksAgainst: ({ part }, { lemma }, _text, { before }) =>
      part === 'a' &&
      /^(enough|many|much|more|several|some|a few|lots of|plenty|plenty of)$/.test(lemma) &&
      (DETERMINER.test(before) || /^(not|so|too|very|as|how|past|last|next|first|\w+n't)$/.test(before)),
  },
  {
    // “many boats” becomes “lots of boats”. “many who came” does not become “lots of who came”.
    name: 'quantity before its noun',
    speaksAgainst: ({ part }, { lemma }, _text, { isBeforeNoun }) =>
      part === 'a' && / of$/.test(lemma) && !isBeforeNoun,
  },
  {
    // A swap that is an uncountable noun cannot follow a number word: not “two moneys”, not “many help”.
    name: 'counted noun',
    speaksAgainst: ({ part, form }, { lemma }, _text, { before }) =>
      part === 'n' &&
      UNCOUNTED.has(lemma) &&
      (form === 's' ||
        /^(an?|one|two|three|four|five|six|ten|many|several|few|each|every|another|both|\d+)$/.test(before)),
  },
  {
    // “Cows” and “clothes” are plural: not “a cows”, not “cows is”.
    name: 'number of the noun',
    speaksAgainst: ({ part, form }, _candidate, text, { before, after }) =>
      part === 'n' &&
      form === 'base' &&
      /[^su]s$/.test(text) &&
      text !== 'news' &&
      (/^(an?|one|this|that|each|every|another|much|little)$/.test(before) ||
        /^(is|was|has|does)$/.test(after)),
  },
  {
    // “rich in opportunity” does not become “rich in chance”, because “chance” would need an article. A noun without an
    // article is uncountable.
    name: 'noun without an article',
    isCounted: true,
    speaksAgainst: ({ part, form }, { lemma }, text, { isBare }) =>
      part === 'n' && form === 'base' && isBare && !UNCOUNTED.has(lemma) && !/[^s]s$/.test(text),
  },
  {
    // A participle before its noun has a sense of its own:
    // - “some perceived danger” is not “some seen danger”
    // - “the second elected mayor” is not “the second chose mayor”
    // - “an astounding film” is not “a shocking film”
    // - “a rather resigned man” is not “a rather quit man”
    // - “manufactured goods” are not “made goods”
    name: 'participle before its noun',
    isCounted: true,
    speaksAgainst: ({ part, form }, _candidate, _text, { before, isBeforeNoun }) =>
      part === 'v' &&
      (form === 'participle' || form === 'past' || form === 'ing') &&
      [DETERMINER, ORDER, SAYS_HOW_MUCH, BE].some((words) => words.test(before)) &&
      isBeforeNoun,
  },
  {
    // “afraid of” becomes “scared of”, but not “shy of”. “told them” does not become “said them”. Based on counts, see
    // `count-followers.ts`.
    name: 'what follows',
    isCounted: true,
    speaksAgainst: ({ lemma: word, part, form }, { lemma, object }, text, { after, table }) => {
      if (!(FOLLOWERS as readonly string[]).includes(after) || part === 'r') return false;
      if (part === 'v' && (object === true || (form === 'participle' && after === 'by'))) return false;
      if (part === 'n' && after !== 'to' && after !== 'that') return false;
      const own = table.follows(lemma, after) ?? table.follows(text.split(' ').at(-1)!, after);
      const asked = table.follows(word, after);
      if (own === null) return asked === null || asked > 0.03;
      return own < 0.012 || (asked !== null && own < asked / 8);
    },
  },
];

/** Nouns without a plural that do not take “a”. */
const UNCOUNTED = new Set(listed.uncounted);

/** Returns whether a swap fits grammatically in the place of the word read as `reading`. Meaning is not considered. */
export function fitsPlace(reading: WordForm, candidate: Candidate, text: string, place: Place): boolean {
  return !RULES.some(
    ({ isCounted, speaksAgainst }) => !isCounted && speaksAgainst(reading, candidate, text, place),
  );
}

/** Returns whether, according to counts, the small word after the original word can also follow the swap. */
export function takesFollower(reading: WordForm, candidate: Candidate, text: string, place: Place): boolean {
  return !RULES.some(
    ({ isCounted, speaksAgainst }) => isCounted && speaksAgainst(reading, candidate, text, place),
  );
}

/** Swaps of small words in exactly the written form, with the neighbouring words that exclude each swap. */
const AS_IS: readonly { readonly swap: RegExp; readonly before: RegExp; readonly after: RegExp }[] = [
  // “no one came” replaces “nobody came”. “a nobody” stays.
  { swap: /^no one$/, before: /^(an?|the|some)$/, after: /^$/ },
  // “if it rains” replaces “whether it rains”. “whether or not”, “whether to go” and “of whether” stay.
  { swap: /^if$/, before: /^(of|about|on|or|to|over|as)$/, after: /^(or|to)$/ },
  // “each day” replaces “every day”. “every other day”, “every two days” and “almost every” stay.
  {
    swap: /^each$/,
    before: /^(almost|nearly|not|the|and)$/,
    after: /^(\d.*|two|three|four|five|six|ten|other|few|so|bit|now|single|time|once|last|one)$/,
  },
  // “it is late” replaces “it's late”. “it's been late” stays, because “it's” means “it has” in this case.
  {
    swap: /^(it|that|there|what) is$/,
    before: /^$/,
    after: /^(been|never|already|got|had|become|\w+ed|taken|gone|done|own)$/,
  },
  // “It is not late” replaces “it isn't late”. “isn't he late” and “isn't it?” stay.
  {
    swap: / not$|^cannot$/,
    before: /^(why|how|where|when|what|who|which)$/,
    after: /^(i|you|he|she|it|we|they|this|that|there)$/,
  },
  // “in the night” replaces “during the night”. “during which” stays.
  { swap: /^in$/, before: /^(only|even)$/, after: /^(which|whom|an?|its|his|her|their|our|my|your)$/ },
  // “as it rained” replaces “because it rained”. “just because”, “is because” and “because of” stay.
  {
    swap: /^(as|since)$/,
    before:
      /^(just|only|simply|is|was|are|it's|that's|not|but|or|and|probably|mainly|partly|largely|mostly)$/,
    after: /^(of|[.,;!?])$/,
  },
];

/** Returns whether a small word can be beside its neighbours. */
export function fitsAsIs(text: string, { before, after }: Place): boolean {
  return !AS_IS.some((rule) => rule.swap.test(text) && (rule.before.test(before) || rule.after.test(after)));
}

export function placeOf(pieces: readonly Piece[], at: number, table: SwapTable): Place {
  const lower = (offset: number): string => pieces[at + offset]?.lower ?? '.';
  const shares = sharesOfForm(lower(1), table);
  const next = pieces[at + 1]?.lower ?? '.';
  const isWord = /^\p{L}/u.test(next) && !ENDS.test(next) && !DETERMINER.test(next) && !SMALL.has(next);
  const isBeforeNoun =
    isWord && (shares === null || DETERMINER.test(lower(-1)) || shares[0]! + shares[2]! > 0.35);
  const following = pieces.slice(at + 1, at + 7).map((piece) => piece.lower);
  const mark = following.findIndex((word) => /^[.,;:!?]/.test(word));
  return {
    before: lower(-1),
    after: lower(1),
    before2: lower(-2),
    ahead: mark < 0 ? following : following.slice(0, mark),
    isBeforeNoun,
    isBare: isBare(pieces, at, table),
    table,
  };
}

/** Returns whether a noun is bare. Looks back over adjectives and nouns for the determiner that a countable noun needs. */
function isBare(pieces: readonly Piece[], at: number, table: SwapTable): boolean {
  for (let i = at - 1; i >= Math.max(0, at - 4); i--) {
    const { lower } = pieces[i]!;
    if (DETERMINER.test(lower) || /^(\d.*|one|no|what|such|which|whose)$/.test(lower)) return false;
    const shares = sharesOfForm(lower, table);
    if (shares === null || shares[0]! + shares[2]! < 0.5 || SMALL.has(lower)) return true;
  }
  return true;
}

/** Returns whether the verb has an object, or null when this is unclear. */
function hasObject(form: Form, { before, before2, after, isBeforeNoun }: Place): boolean | null {
  const isPassive =
    form === 'participle' &&
    (BE.test(before) || (/^(not|\w+ly|also|been|being)$/.test(before) && BE.test(before2)));
  if (isPassive) return true;
  if (OBJECT.test(after) || (isBeforeNoun && form !== 'participle')) return true;
  if (form === 'participle' && !/^(have|has|had|'ve)$/.test(before)) return null;
  return ENDS.test(after) || /^(\w+ly|up|down|out|off|of|into|again|too|so)$/.test(after) ? false : null;
}
