import { endOf, findClause, isFiniteVerb, isNot } from './find-clause.ts';
import type { Case, Word } from './types.ts';
import wordings from './wordings.json';

const KEPT_ADVERBS = new Set(wordings.keptAdverbs);
const DEGREE =
  /^(?:very|extremely|quite|rather|incredibly|truly|really|particularly|especially|exceptionally|remarkably|deeply|absolutely|completely|utterly|entirely|perfectly|terribly|awfully)$/;
/** Words that form one unit with a degree word behind them: not very. */
const BOUND_BEFORE_DEGREE = /^(?:so|not|as|too|how|very|such|more|most|less|only|and|or)$/;
/** Words that form one unit with an adverb behind them: so slowly. */
const BOUND_BEFORE =
  /^(?:so|as|too|how|more|most|less|least|very|quite|rather|only|just|even|and|or|but|that)$/;
const BOUND_BEHIND = /^(?:as|enough|and|or|but|than|that|for|to)$/;
const WAY =
  /^(?:toward|towards|into|onto|across|along|through|over|around|down|up|at|away|behind|beside|under)$/;
const CLAUSE_OPENER = /^(?:,|;|and|but|so|then|that|when|as|while|because|if|after|before|until|where|“|")$/;

/** An adverb with the words or punctuation marks on both sides. */
export interface AdverbPlace {
  readonly words: readonly Word[];
  readonly at: number;
  readonly word: Word;
  readonly before: Word;
  readonly after: Word;
  readonly after2: Word | undefined;
}

/** A rule that tells whether an adverb may be removed. The examples and counter-examples mark the adverb with asterisks. */
export interface AdverbRule extends Case<AdverbPlace> {
  readonly goes: boolean;
}

/** Rules for degree words: very, extremely. */
export const DEGREE_RULES: readonly AdverbRule[] = [
  {
    name: 'it is beside a mark',
    example: 'The boat was old, *very* old.',
    counterExample: 'The boat was *very* old.',
    applies: ({ before, after }) => before.kind === 'mark' || after.kind === 'mark',
    goes: false,
  },
  {
    name: 'not is up to five words before: not a very nice day is no bad day',
    example: 'It was not a *very* old boat.',
    counterExample: 'It was a *very* old boat.',
    applies: (place) => isNotNear(place, 5),
    goes: false,
  },
  {
    name: 'the word before it belongs to it',
    example: 'The boat was so *very* old.',
    counterExample: 'The boat was *very* old.',
    applies: ({ before }) => BOUND_BEFORE_DEGREE.test(before.lower),
    goes: false,
  },
  {
    name: 'no noun follows its adjective: the very young are no young ones',
    example: 'The *very* young ran away.',
    counterExample: 'The *very* old boat sank.',
    applies: ({ before, after2 }) =>
      before.kind === 'determiner' && !/^(?:noun|adjective)$/.test(after2?.kind ?? ''),
    goes: false,
  },
  {
    name: 'that or than follows its adjective',
    example: 'Bram was *very* glad that the boat came.',
    counterExample: 'Bram was *very* glad of the boat.',
    applies: ({ after2 }) => /^(?:that|than)$/.test(after2?.lower ?? ''),
    goes: false,
  },
  {
    name: 'it is before an adjective',
    example: 'A *very* old boat came in.',
    counterExample: 'The boat leaked *very* much.',
    applies: ({ after }) => after.kind === 'adjective' && after.sure > 0.8,
    goes: true,
  },
];

/** Rules for adverbs in -ly. */
export const ADVERB_RULES: readonly AdverbRule[] = [
  {
    name: 'the word before it belongs to it, or is not',
    example: 'He moved so *slowly* toward the boat.',
    counterExample: 'He moved *slowly* toward the boat.',
    applies: ({ before }) => isNot(before) || BOUND_BEFORE.test(before.lower),
    goes: false,
  },
  {
    name: 'the word behind it belongs to it',
    example: 'He moved *slowly* enough toward the boat.',
    counterExample: 'He moved *slowly* toward the boat.',
    applies: ({ after }) => BOUND_BEHIND.test(after.lower),
    goes: false,
  },
  {
    name: 'it is between a subject and its verb',
    example: 'Bram *suddenly* grabbed the rope.',
    counterExample: 'Bram saw the *freshly* painted boat.',
    applies: (place) =>
      isBeforeVerb(place) && isSubjectEnd(place.words, place.at) && isFiniteVerb(place.words, place.at + 1),
    goes: true,
  },
  {
    name: 'it is between a helper and its verb',
    example: 'The boat had *slowly* turned to the quay.',
    counterExample: 'The boat was *slowly* turning to the quay.',
    applies: (place) => isBeforeVerb(place) && place.before.kind === 'helper',
    goes: true,
  },
  {
    name: 'it is between what was done and a way',
    example: 'He moved *slowly* toward the boat.',
    counterExample: 'He sat *quietly* behind the boat.',
    applies: ({ words, at, before, after }) =>
      isPlainPast(before) && before.sure > 0.85 && WAY.test(after.lower) && isFiniteVerb(words, at - 1),
    goes: true,
  },
  {
    name: 'it ends the sentence, near a verb that says enough without it',
    example: 'She closed the door *slowly*.',
    counterExample: 'She thought of the boat *sadly*.',
    applies: ({ words, at, before }) => {
      if (at + 1 !== endOf(words) || !/^(?:noun|object)$/.test(before.kind)) return false;
      const verb = words.findLastIndex(({ kind }, i) => i < at && kind === 'verb');
      return verb >= 0 && verb >= at - 4 && isPlainPast(words[verb]!);
    },
    goes: true,
  },
];

/**
 * Returns the adverb at a place in a sentence. Returns null where no rule applies: the word is no adverb, it changes
 * the meaning strongly (hardly), or it is beside a dash.
 */
export function adverbAt(words: readonly Word[], at: number): AdverbPlace | null {
  const [before, word, after] = [words[at - 1], words[at]!, words[at + 1]];
  if (word.isInside || !before || !after) return null;
  if (before.text === '-' || /^[-–—]$/.test(after.text)) return null;
  return isDegree(word) || isPlainAdverb(word)
    ? { words, at, word, before, after, after2: words[at + 2] }
    : null;
}

/** Returns whether the sentence has nearly the same meaning without its adverb. */
export function mayGo(place: AdverbPlace): boolean {
  const rules = isDegree(place.word) ? DEGREE_RULES : ADVERB_RULES;
  return rules.find((rule) => rule.applies(place))?.goes ?? false;
}

function isDegree({ lower }: Word): boolean {
  return DEGREE.test(lower);
}

function isPlainAdverb({ kind, lower }: Word): boolean {
  return kind === 'adverb' && /..ly$/.test(lower) && !KEPT_ADVERBS.has(lower);
}

function isNotNear({ words, at }: AdverbPlace, reach: number): boolean {
  return words.slice(Math.max(0, at - reach), at).some(isNot);
}

/**
 * Returns whether only a verb follows. Counter-examples: “the freshly painted boat”, “she quietly asked before he
 * came”.
 */
function isBeforeVerb(place: AdverbPlace): boolean {
  const { after, after2 } = place;
  const isVerb = after.kind === 'verb' && after.sure > 0.85 && after.form !== 'ing';
  return isVerb && !/^(?:noun|adjective|clause|mark)$/.test(after2?.kind ?? 'mark') && !isNotNear(place, 4);
}

/** Returns whether a word is the past of a verb for an action. Such a verb is clear enough without its adverb. */
function isPlainPast({ kind, form, lower }: Word): boolean {
  return kind === 'verb' && form === 'past' && !isSteady(lower);
}

/** Returns whether a subject ends just before `at`. The subject begins at the start of the sentence or of a clause. */
function isSubjectEnd(words: readonly Word[], at: number): boolean {
  for (let start = at - 1; start >= Math.max(0, at - 8); start--) {
    const opens = start === 0 || CLAUSE_OPENER.test(words[start - 1]!.lower);
    if (opens && findClause(words, start)?.subjectEnd === at) return true;
  }
  return /^(?:he|she|it|they|we|i|you|who)$/.test(words[at - 1]?.lower ?? '');
}

function isSteady(verb: string): boolean {
  return (
    wordings.steadyVerbs.some((steady) => verb === steady || verb.startsWith(steady.replace(/e$/, ''))) ||
    /^(?:was|were|is|are|did|went|thought|spoke|felt|fell|grew|rose|stood|lay|sat|paid)$/.test(verb)
  );
}
