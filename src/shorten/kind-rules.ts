import { type Piece, type SwapTable, weighReadings } from '../swap/index.ts';
import type { Case, Kind, VerbForm, Word } from './types.ts';

const list = (words: string): ReadonlySet<string> => new Set(words.split(/\s+/));

const KINDS: readonly (readonly [Kind, ReadonlySet<string>])[] = [
  ['determiner', list('the a an this that these those each every some any all both another either')],
  ['possessive', list('my your his its our their whose')],
  ['subject', list('i he she it we they you there')],
  ['object', list('me him us them')],
  [
    'pronoun',
    list(
      `someone somebody something anyone anybody anything everyone everybody everything others himself herself itself
      themselves myself ourselves yourself who's`,
    ),
  ],
  [
    'helper',
    list(
      `is are was were am be been being has have had do does did will would can could may might must shall should
      isn't aren't wasn't weren't hasn't haven't hadn't don't doesn't didn't won't wouldn't can't cannot couldn't
      shouldn't mustn't`,
    ),
  ],
  [
    'preposition',
    list(
      `of in on at by for with from into onto over under about against between through during within without upon
      across along behind beside besides below above beneath beyond despite toward towards near among amid
      around outside inside throughout off like unlike per via`,
    ),
  ],
  ['joiner', list('and or but nor yet so')],
  [
    'clause',
    list(
      'because if unless until while when whenever as although though since whereas once before after till than whether lest',
    ),
  ],
  ['relative', list('who whom which where why how what whoever whatever whichever wherever')],
  ['not', list('not never no none nobody nothing nowhere neither')],
  [
    'number',
    list(
      `one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen
      nineteen twenty thirty forty fifty sixty seventy eighty ninety hundred hundreds thousand thousands million millions
      billion billions dozen dozens first second third half twice once`,
    ),
  ],
  [
    'adverb',
    list(
      `very too also then now here just still even only again soon always often sometimes ever already almost quite rather
      away back up down out instead perhaps maybe together later today yesterday tomorrow however therefore thus`,
    ),
  ],
];

/** Matches a subject with its auxiliary verb: he's, they've, there'll. */
export const SHORT_SUBJECT = /^(?:i|you|he|she|it|we|they|there|that)'(?:m|s|re|ve|ll|d)$/;
const PARTS: Readonly<Record<string, Kind>> = { n: 'noun', v: 'verb', a: 'adjective', r: 'adverb' };
const PAST_HELPERS = /^(was|were|had|did|would|could|might|wasn't|weren't|hadn't|didn't|wouldn't|couldn't)$/;

/** The kind that a rule gives a word. */
type Said = Pick<Word, 'kind' | 'form' | 'sure'>;

/** A word with its place in the sentence. */
export interface WordPlace {
  readonly text: string;
  readonly lower: string;
  /** The next word or mark, in lower case. Empty at the end. */
  readonly next: string;
  readonly isNextCapital: boolean;
  /** Whether the word begins the sentence, or a part in quotation marks or brackets. */
  readonly isFirst: boolean;
}

/** A rule that tells the kind of a word. The examples and counter-examples mark the word with asterisks. */
export interface KindRule extends Case<WordPlace> {
  readonly says: (place: WordPlace) => Said;
}

/** Rules for words whose kind is known without their parts of speech. */
export const KIND_RULES: readonly KindRule[] = [
  {
    name: 'a number in figures',
    example: 'They saw *12* boats.',
    counterExample: 'They saw *twelve* boats.',
    applies: ({ text }) => /^\d/.test(text),
    says: () => plain('number'),
  },
  {
    name: 'to before a thing',
    example: 'They ran *to* the quay.',
    counterExample: 'They began *to* run.',
    applies: (place) => place.lower === 'to' && isThingAhead(place),
    says: () => plain('preposition'),
  },
  {
    name: 'to before a verb',
    example: 'They began *to* run.',
    counterExample: 'They ran *to* the quay.',
    applies: ({ lower }) => lower === 'to',
    says: () => plain('to'),
  },
  {
    name: 'a subject with its helper',
    example: "Bram says *he's* late.",
    counterExample: "The *ferry's* horn blew.",
    applies: ({ lower }) => SHORT_SUBJECT.test(lower),
    says: ({ lower }) => ({ kind: 'subject', form: /'d$/.test(lower) ? 'past' : 's', sure: 1 }),
  },
  {
    name: 'her before a thing',
    example: 'Bram saw *her* boat.',
    counterExample: 'Bram saw *her* at the quay.',
    applies: ({ lower, next }) => lower === 'her' && /^\p{L}/u.test(next) && !isSmall(next),
    says: () => plain('possessive'),
  },
  {
    name: 'her by itself',
    example: 'Bram saw *her* at the quay.',
    counterExample: 'Bram saw *her* boat.',
    applies: ({ lower }) => lower === 'her',
    says: () => plain('object'),
  },
  {
    name: 'a helper',
    example: 'The ferry *was* late.',
    counterExample: 'The ferry *sank* late.',
    applies: (place) => listedKind(place) === 'helper',
    says: ({ lower }) => ({ kind: 'helper', form: PAST_HELPERS.test(lower) ? 'past' : 's', sure: 1 }),
  },
  {
    name: 'a word of the lists',
    example: 'They rowed *down* the river.',
    counterExample: 'They rowed to *Down* and back.',
    applies: (place) => listedKind(place) !== undefined,
    says: (place) => plain(listedKind(place)!),
  },
  {
    name: 'any other word in n’t',
    example: "They *needn't* row.",
    counterExample: "They *don't* row.",
    applies: ({ lower }) => /n't$/.test(lower),
    says: () => ({ kind: 'helper', form: 's', sure: 1 }),
  },
  {
    name: 'a possessive',
    example: "The *ferry's* horn blew.",
    counterExample: "The horn of *Bram's* ferry blew.",
    applies: ({ text, lower }) => /'s$|s'$/.test(lower) && !isCapital(text),
    says: () => plain('possessive'),
  },
  {
    name: 'a capital within the sentence',
    example: 'Then *Bram* ran.',
    counterExample: '*Boats* came in.',
    applies: ({ text, isFirst }) => isCapital(text) && !isFirst,
    says: () => plain('name'),
  },
];

/** Returns the place of the piece with index `at`. */
export function placeOf(sentence: string, pieces: readonly Piece[], at: number, isFirst: boolean): WordPlace {
  const { start, end, lower } = pieces[at]!;
  const next = pieces[at + 1];
  return {
    text: sentence.slice(start, end),
    lower,
    next: next?.lower ?? '',
    // At the end of the sentence, this checks its first letter.
    isNextCapital: isCapital(sentence.charAt(next?.start ?? 0)),
    isFirst,
  };
}

/**
 * Returns the kind of the word at a place. The rules come first, then the likeliest part of speech in that place, then
 * a guess by the letters.
 */
export function kindOf(place: WordPlace, pieces: readonly Piece[], at: number, table: SwapTable): Said {
  const rule = KIND_RULES.find(({ applies }) => applies(place));
  return rule?.says(place) ?? likeliestKind(pieces, at, table) ?? guessKind(place);
}

function likeliestKind(pieces: readonly Piece[], at: number, table: SwapTable): Said | null {
  const readings = weighReadings(pieces, at, table);
  if (readings.length === 0) return null;
  const sums = new Map<string, number>();
  for (const { part, likely } of readings) sums.set(part, (sums.get(part) ?? 0) + likely);
  const [part, sure] = [...sums].sort(([, one], [, other]) => other - one)[0]!;
  const form = readings.find((reading) => reading.part === 'v')?.form ?? null;
  return { kind: PARTS[part]!, form: part === 'v' ? (form as VerbForm) : null, sure };
}

function guessKind({ text, lower }: WordPlace): Said {
  if (isCapital(text)) return plain('name');
  if (/ly$/.test(lower)) return plain('adverb');
  return { kind: 'noun', form: null, sure: 0.5 };
}

/**
 * Returns the listed kind of a word. Returns undefined for a word with a capital within the sentence, which may be a
 * name.
 */
function listedKind({ text, lower, isFirst }: WordPlace): Kind | undefined {
  if (!isFirst && isCapital(text) && !lower.startsWith('i')) return undefined;
  return KINDS.find(([, words]) => words.has(lower))?.[0];
}

function isThingAhead({ next, isNextCapital }: WordPlace): boolean {
  const isListed = KINDS.some(
    ([kind, words]) => /^(?:determiner|possessive|object|pronoun|number)$/.test(kind) && words.has(next),
  );
  return isListed || isNextCapital || /^her$|^\d/.test(next);
}

/** Returns whether a word is in the lists of kinds other than numbers and adverbs. */
function isSmall(lower: string): boolean {
  return KINDS.some(([kind, words]) => kind !== 'number' && kind !== 'adverb' && words.has(lower));
}

function isCapital(text: string): boolean {
  return /^\p{Lu}/u.test(text);
}

function plain(kind: Kind): Said {
  return { kind, form: null, sure: 1 };
}
