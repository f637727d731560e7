import { findRule, type Rule, standsBeforeName } from '../../analyze/index.ts';
import { isParticle, isPhrasal, type PhraseClass, takesTo } from './phrase-words.ts';

/** A word of a sentence. */
export interface PhraseWord {
  /** The word as it is written between two spaces, with its marks. */
  readonly shown: string;
  readonly word: string;
  readonly is: PhraseClass;
}

/** The gap between two words of a sentence. */
interface BreakPlace {
  readonly words: readonly PhraseWord[];
  /** The index of the word after the gap. */
  readonly i: number;
  readonly before: PhraseWord;
  readonly here: PhraseWord;
  readonly next: PhraseWord | undefined;
}

/** A rule for how good a place for a break is. The examples are cut at every break, including breaks of other rules. */
export interface BreakRule extends Rule<BreakPlace> {
  /**
   * The worth of a break, from `NEVER` to 4. It is weighed against the cost of phrases by their length. Our own
   * figures.
   */
  readonly worth: number;
}

type Condition = (place: BreakPlace) => boolean;

/** The worth of a place where no reader stops. */
const NEVER = -20;
/** Classes of words after which the phrase continues: the | boat, with | a, was | coming. */
const GO_ON: ReadonlySet<PhraseClass> = new Set([
  'determiner',
  'subject',
  'preposition',
  'joiner',
  'clause',
  'relative',
  'helper',
  'degree',
]);

const beforeKind =
  (kind: PhraseClass, condition: Condition = () => true): Condition =>
  (place) =>
    place.here.is === kind && condition(place);
const beforeTo = (condition: Condition): Condition =>
  beforeKind('preposition', (place) => place.here.word === 'to' && condition(place));
const beforeVerb =
  (condition: (subject: readonly PhraseWord[]) => boolean): Condition =>
  (place) =>
    isAction(place.here) && condition(subjectOf(place));
const noActionBefore: Condition = ({ words, i }) => !words.slice(0, i).some(isAction);

/** Breaks are at marks, before joining words and prepositions and after longer subjects. */
export const BREAK_RULES: readonly BreakRule[] = [
  {
    name: 'never after a title',
    example: '“Row!” | said Mr. Falk.',
    counterExample: '“Row!” | said Bram.',
    applies: ({ before }) => before.shown.endsWith('.') && standsBeforeName(before.shown.slice(0, -1)),
    worth: NEVER,
  },
  {
    name: 'after a mark that ends a sentence',
    example: '“Row!” | said Bram.',
    counterExample: 'The ferry is late, | so we have to wait.',
    applies: ({ before }) => /[.!?…]["”’)]*$/.test(before.shown),
    worth: 4,
  },
  {
    name: 'not in a row of words for one thing',
    example: 'It was a cold, wet night',
    counterExample: 'The ferry is late, | so we have to wait.',
    applies: (place) =>
      isAtMark(place) && isDescribed(place) && place.here.is === 'other' && place.next?.is === 'other',
    worth: -2,
  },
  {
    name: 'after a comma and at a dash',
    example: 'The ferry is late, | so we have to wait.',
    counterExample: 'It was a cold, wet night',
    applies: isAtMark,
    worth: 3,
  },
  {
    name: 'not before a last word alone',
    example: 'Have you heard | this joke before?',
    counterExample: 'Sit by the fire, | Bram.',
    applies: ({ next }) => next === undefined,
    worth: -3,
  },
  {
    name: 'never within out of, even though and side by side',
    example: 'They sat side by side.',
    counterExample: 'We could not hear him | because the wind blew.',
    applies: ({ before, here, next, words, i }) =>
      (before.word === 'even' && here.is === 'clause') ||
      (before.word === 'out' && here.word === 'of') ||
      (here.is === 'preposition' && before.word === next?.word) ||
      (before.is === 'preposition' && here.word === words[i - 2]?.word),
    worth: NEVER,
  },
  {
    name: 'never before a lot, nor before a day behind how often',
    example: 'We eat twice a day.',
    counterExample: 'Ines gave him | the map.',
    applies: ({ before, here, next }) =>
      here.word === 'a' && (next?.word === 'lot' || /^(?:once|twice|times)$/.test(before.word)),
    worth: NEVER,
  },
  {
    name: 'before how long before or after, and just for',
    example: 'The ferry came in | just after six.',
    counterExample: 'The old ferry | came slowly',
    applies: ({ here, next }) =>
      (/^(?:just|soon|long|shortly)$/.test(here.word) && /^(?:after|before)$/.test(next?.word ?? '')) ||
      (here.word === 'just' && next?.is === 'preposition'),
    worth: 1.6,
  },
  {
    name: 'never within how long before or after',
    example: 'The ferry came in | just after six.',
    counterExample: 'We left | after lunch.',
    applies: ({ before, here }) =>
      /^(?:just|soon|long|shortly)$/.test(before.word) && /^(?:after|before)$/.test(here.word),
    worth: NEVER,
  },
  {
    name: 'never behind a word that goes on to the next, but for a little word that ends its verb',
    example: 'A small boat | with a white sail',
    counterExample: 'Boats sail.',
    applies: (place) => GO_ON.has(place.before.is) && !closesVerb(place),
    worth: NEVER,
  },
  {
    name: 'never between what or who and its verb',
    example: 'Make a plan | about what goes in.',
    counterExample: 'The old ferry | came slowly',
    applies: ({ before, here }) => /^(?:what|who)$/.test(before.word) && isAction(here),
    worth: NEVER,
  },
  {
    name: 'before but',
    example: 'We called him | but nobody came.',
    counterExample: 'Otto and Bram ran.',
    applies: beforeKind('joiner', ({ here }) => here.word === 'but'),
    worth: 2,
  },
  {
    name: 'never before and with the same word again, nor at the end',
    example: 'They pulled and pulled.',
    counterExample: 'They took the oars | and went home.',
    applies: beforeKind('joiner', ({ before, next }) => next === undefined || next.word === before.word),
    worth: NEVER,
  },
  {
    name: 'never between the two who do something',
    example: 'The crab and the gull | both hid.',
    counterExample: 'The crab hid | and the gull flew off.',
    applies: beforeKind(
      'joiner',
      ({ here, words, i }) =>
        here.word === 'and' && i === 2 && words[0]!.is === 'determiner' && words[1]!.is === 'other',
    ),
    worth: NEVER,
  },
  {
    name: 'not between a first word and the joiner behind it',
    example: 'Go and tell her.',
    counterExample: 'The crab hid | and the gull flew off.',
    applies: beforeKind('joiner', ({ i }) => i === 1),
    worth: -3,
  },
  {
    name: 'before and with a new doing or a determiner',
    example: 'They took the oars | and went home.',
    counterExample: 'Otto and Bram ran.',
    applies: beforeKind('joiner', ({ next }) => isAction(next!) || opensClause(next!)),
    worth: 1.6,
  },
  {
    name: 'before and with one word and a doing',
    example: 'She held the rope | and gulls flew.',
    counterExample: 'Otto and Bram ran.',
    applies: beforeKind('joiner', ({ before, next, words, i }) => {
      const then = words[i + 2];
      return then !== undefined && isAction(then) && next!.is === 'other' && before.is !== 'name';
    }),
    worth: 0.6,
  },
  {
    name: 'not before the second of two words',
    example: 'They saw Otto and Bram.',
    counterExample: 'They took the oars | and went home.',
    applies: beforeKind('joiner'),
    worth: -0.8,
  },
  {
    name: 'not inside as … as',
    example: 'Wilma can swim | as fast as a seal.',
    counterExample: 'We could not hear him | because the wind blew.',
    applies: beforeKind(
      'clause',
      ({ here, words, i }) =>
        here.word === 'as' && words.slice(Math.max(0, i - 3), i).some(({ word }) => word === 'as'),
    ),
    worth: -3,
  },
  {
    name: 'before a clause',
    example: 'We could not hear him | because the wind blew.',
    counterExample: 'He ran back | to the school',
    applies: beforeKind('clause'),
    worth: 1.8,
  },
  {
    name: 'not before that without a clause',
    example: 'He said that boats sank.',
    counterExample: 'Bram thinks | that the crab is here.',
    applies: beforeKind(
      'relative',
      ({ here, next }) => here.word === 'that' && next !== undefined && !opensClause(next),
    ),
    worth: -0.8,
  },
  {
    name: 'before who, which, that and whose',
    example: 'Bram thinks | that the crab is here.',
    counterExample: 'He said that boats sank.',
    applies: beforeKind('relative'),
    worth: 1.4,
  },
  {
    name: 'not between a verb and the little word that makes one idea with it',
    example: 'Otto looked at the crab.',
    counterExample: 'Otto sat | at the end | of the quay.',
    applies: beforeKind('preposition', ({ before, here }) => isPhrasal(before.word, here.word)),
    worth: -3,
  },
  {
    name: 'not between me or him and back',
    example: 'She gave me back my hat.',
    counterExample: 'He ran back | to the school',
    applies: ({ before, here }) => before.is === 'object' && here.word === 'back',
    worth: -3,
  },
  {
    name: 'not before the little word of a verb',
    example: 'The lamp went on | at six.',
    counterExample: 'The lamp stood | on the table.',
    applies: beforeKind(
      'preposition',
      ({ here, next }) =>
        isParticle(here.word) &&
        !(here.word === 'out' && next?.word === 'of') &&
        (next === undefined || !opensThing(next) || /[,.!?;:]/.test(here.shown)),
    ),
    worth: -2.5,
  },
  {
    name: 'seldom before of',
    example: 'She saw the end | of the quay.',
    counterExample: 'Her brother works | on a ship',
    applies: beforeKind('preposition', ({ here }) => here.word === 'of'),
    worth: -1,
  },
  {
    name: 'not before to behind close, near and on',
    example: 'A cap lay close to them.',
    counterExample: 'He ran back | to the school',
    applies: beforeTo(({ before }) => /^(?:close|near|on)$/.test(before.word)),
    worth: -2,
  },
  {
    name: 'never between what or who and the one who does',
    example: 'Draw what you saw.',
    counterExample: 'He said | that she was here.',
    applies: ({ before, here }) => /^(?:what|who|how|where|why)$/.test(before.word) && here.is === 'subject',
    worth: NEVER,
  },
  {
    name: 'not before a preposition and him or it',
    example: 'The dog ran to him.',
    counterExample: 'Her brother works | on a ship',
    applies: beforeKind('preposition', ({ next }) => next?.is === 'object' || next?.is === 'subject'),
    worth: -1,
  },
  {
    name: 'not before to of a doing that is wanted',
    example: 'Otto wanted to catch a crab',
    counterExample: 'He ran back | to the school',
    applies: beforeTo(({ before }) => takesTo(before.word)),
    worth: -3,
  },
  {
    name: 'seldom before to with a verb',
    example: 'They stopped to sit | by the fire.',
    counterExample: 'He ran back | to the school',
    applies: beforeTo(({ next }) => next !== undefined && !opensThing(next)),
    worth: 0.2,
  },
  {
    name: 'not between a little word and a place of one word at the end',
    example: 'The boat | sailed out to sea.',
    counterExample: 'He ran back | to the school',
    applies: beforeKind('preposition', ({ before, next }) => isParticle(before.word) && opensBare(next)),
    worth: -0.8,
  },
  {
    name: 'seldom between a little word and a preposition',
    example: 'He ran back | to the school',
    counterExample: 'The boat | sailed out to sea.',
    applies: beforeKind('preposition', ({ before }) => isParticle(before.word)),
    worth: 0.2,
  },
  {
    name: 'not between the first thing and where it is',
    example: 'The cat on the step | was asleep.',
    counterExample: 'Her brother works | on a ship',
    applies: beforeKind(
      'preposition',
      ({ words, i, before }) =>
        i === 2 && words[0]!.is === 'determiner' && before.is === 'other' && words.slice(i).some(isAction),
    ),
    worth: -1,
  },
  {
    name: 'seldom before a preposition where nothing is done yet',
    example: 'The old lamp | in the lighthouse shone.',
    counterExample: 'Her brother works | on a ship',
    applies: beforeKind('preposition', noActionBefore),
    worth: -0.3,
  },
  {
    name: 'not between a verb behind he, who or and, and its preposition',
    example: 'He ran up the steps.',
    counterExample: 'Her brother works | on a ship',
    applies: beforeKind('preposition', ({ before, words, i }) => {
      const starter = words[i - 2]?.is;
      return isAction(before) && (starter === 'relative' || starter === 'subject' || starter === 'joiner');
    }),
    worth: -0.5,
  },
  {
    name: 'seldom before a preposition and one word at the end',
    example: 'The rocks were covered | with mud.',
    counterExample: 'Her brother works | on a ship',
    applies: beforeKind('preposition', ({ next }) => opensBare(next)),
    worth: 0.1,
  },
  {
    name: 'before a preposition',
    example: 'Her brother works | on a ship',
    counterExample: 'He ran up the steps.',
    applies: beforeKind('preposition'),
    worth: 0.9,
  },
  {
    name: 'not between verbs, nor before the verb of he or she',
    example: 'He let go | of the rope.',
    counterExample: 'The old ferry | came slowly',
    applies: beforeVerb((subject) => subject.length === 0 || subject.at(-1)!.is === 'subject'),
    worth: -2,
  },
  {
    name: 'not after a subject of one word',
    example: 'Bram ran | along the quay.',
    counterExample: 'The old ferry | came slowly',
    applies: beforeVerb((subject) => subject.length === 1),
    worth: -1.5,
  },
  {
    name: 'after a subject of three words and more',
    example: 'The old ferry | came slowly',
    counterExample: 'The ferry came slowly.',
    applies: beforeVerb((subject) => subject.length > 2),
    worth: 1.1,
  },
  {
    name: 'seldom after a subject of two words',
    example: 'The ferry came slowly.',
    counterExample: 'The old ferry | came slowly',
    applies: beforeVerb(() => true),
    worth: -0.4,
  },
  {
    name: 'not before he or she behind a verb, then, first and so',
    example: 'First she ran home.',
    counterExample: 'After lunch | she ran home.',
    applies: beforeKind(
      'subject',
      ({ before }) => before.is === 'verb' || /^(?:then|first|so)$/.test(before.word),
    ),
    worth: -2,
  },
  {
    name: 'before he or she',
    example: 'After lunch | she ran home.',
    counterExample: 'First she ran home.',
    applies: beforeKind('subject'),
    worth: 1.4,
  },
  {
    name: 'not between a verb and a determiner',
    example: 'Bram mended the net.',
    counterExample: 'In the morning | the children set off.',
    applies: beforeKind('determiner', ({ before }) => before.is === 'verb' || before.word === 'not'),
    worth: -1.2,
  },
  {
    name: 'between him or them and a determiner',
    example: 'Ines gave him | the map.',
    counterExample: 'Bram mended the net.',
    applies: beforeKind('determiner', ({ before }) => before.is === 'object'),
    worth: 0.5,
  },
  {
    name: 'before a determiner behind where or when',
    example: 'In the morning | the children set off.',
    counterExample: 'Bram mended the net.',
    applies: beforeKind(
      'determiner',
      (place) => place.i > 1 && startsAside(place.words) && noActionBefore(place),
    ),
    worth: 1.4,
  },
  {
    name: 'not before the last two words',
    example: 'Do not run | if you see a bee.',
    counterExample: 'They met him | near the quay | all day long.',
    applies: beforeKind('determiner', ({ words, i }) => i === words.length - 2),
    worth: -1.1,
  },
  {
    name: 'seldom before any other determiner',
    example: 'They met him | near the quay | all day long.',
    counterExample: 'Bram mended the net.',
    applies: beforeKind('determiner'),
    worth: 0.3,
  },
  {
    name: 'before a name behind where or when',
    example: 'In the morning | Ines set off.',
    counterExample: 'The children met Ines.',
    applies: beforeKind(
      'name',
      (place) => place.before.is === 'other' && startsAside(place.words) && noActionBefore(place),
    ),
    worth: 1.4,
  },
  {
    name: 'not before any other name',
    example: 'The children saw Ines again.',
    counterExample: 'The children met him.',
    applies: beforeKind('name'),
    worth: -1.2,
  },
  {
    name: 'not before any other word',
    example: 'Boats sail slowly.',
    counterExample: 'The children met Ines.',
    applies: () => true,
    worth: -3,
  },
];

/** Returns how good a place the gap before word `i` is, from `NEVER` to 4. */
export function weighBreak(words: readonly PhraseWord[], i: number): number {
  const place = { words, i, before: words[i - 1]!, here: words[i]!, next: words[i + 1] };
  return findRule(BREAK_RULES, place)!.worth;
}

function isAtMark({ before, here }: BreakPlace): boolean {
  return /[,;:–—]["”’)]*$/.test(before.shown) || /^[–—]/.test(here.shown);
}

/** Returns whether a gap follows a determiner and one or more words with a comma: a large, black, … */
function isDescribed({ words, i }: BreakPlace): boolean {
  let at = i - 1;
  while (at > 0 && words[at]!.is === 'other' && words[at]!.shown.endsWith(',')) at--;
  return at < i - 1 && words[at]!.is === 'determiner';
}

/**
 * Returns whether a particle ends a verb and is not followed by a noun of its own: the on of `put on`, but not the in
 * of `in that pot`.
 */
function closesVerb({ words, i, before, here, next }: BreakPlace): boolean {
  const isThing = opensThing(here) || (here.word === 'that' && next !== undefined && !opensClause(next));
  return isParticle(before.word) && i > 1 && words[i - 2]!.is !== 'determiner' && !isThing;
}

/** Returns whether a word alone ends its sentence or its part of a sentence: the sea of `to sea.` */
function opensBare(word: PhraseWord | undefined): boolean {
  return word?.is === 'other' && /\p{P}$/u.test(word.shown);
}

/** Returns the words between the start of the clause, or another verb, and this word. */
function subjectOf({ words, i }: BreakPlace): readonly PhraseWord[] {
  let start = i;
  while (start > 0 && !isAction(words[start - 1]!) && !startsClause(words, start - 1)) start--;
  return words.slice(start, i);
}

/**
 * Returns whether a word starts a clause, so that the subject begins after it at the latest: But at the start of a
 * sentence. The and of Otto and Bram is inside the subject.
 */
function startsClause(words: readonly PhraseWord[], i: number): boolean {
  const { is } = words[i]!;
  if (is === 'joiner') return i === 0 || (i > 1 && words[i - 1]?.is !== 'name');
  return is === 'clause' || is === 'relative';
}

/** Returns whether a sentence begins with words for when or where: In the morning, If the wind drops. */
function startsAside(words: readonly PhraseWord[]): boolean {
  const { is } = words[0]!;
  return is === 'preposition' || is === 'clause';
}

function isAction({ is }: PhraseWord): boolean {
  return is === 'verb' || is === 'helper';
}

function opensThing({ is }: PhraseWord): boolean {
  return is === 'determiner' || is === 'object' || is === 'name' || is === 'other' || is === 'subject';
}

function opensClause({ is }: PhraseWord): boolean {
  return is === 'determiner' || is === 'subject' || is === 'verb' || is === 'helper' || is === 'clause';
}
