import type { SwapTable } from '../swap/index.ts';
import { cutWords, type Piece, weighReadings } from '../swap/index.ts';
import type { Kind, VerbForm, Word } from './types.ts';

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

/** A subject with its helper: he's, they've, there'll. */
export const SHORT_SUBJECT = /^(?:i|you|he|she|it|we|they|there|that)'(?:m|s|re|ve|ll|d)$/;
const PARTS: Readonly<Record<string, Kind>> = { n: 'noun', v: 'verb', a: 'adjective', r: 'adverb' };
const PAST_HELPERS = /^(was|were|had|did|would|could|might|wasn't|weren't|hadn't|didn't|wouldn't|couldn't)$/;
const OPEN = /^["“([]$/;

/** The words and marks of a sentence, each with what it likely is there. */
export function readWords(sentence: string, table: SwapTable): Word[] {
  const pieces = cutWords(sentence).flatMap(partNumber);
  const words: Word[] = [];
  let closing: string | null = null;
  for (const [i, { start, end, lower }] of pieces.entries()) {
    const text = sentence.slice(start, end);
    const isWord = /[\p{L}\d]/u.test(text);
    let isInside = closing !== null;
    if (!isWord) {
      if (closing !== null && text === closing) closing = null;
      else if (closing === null && OPEN.test(text)) {
        const wanted: string = text === '“' ? '”' : text === '(' ? ')' : text === '[' ? ']' : '"';
        const isClosed = pieces.some(
          (piece, j) => j > i && sentence.slice(piece.start, piece.end) === wanted,
        );
        // Speech that is closed in a later sentence goes on to the end of this one.
        if (isClosed || /["“]/.test(text)) {
          closing = wanted;
          isInside = true;
        }
      }
      words.push({ start, end, text, lower, kind: 'mark', form: null, sure: 1, isInside });
      continue;
    }
    words.push({ start, end, text, lower, isInside, ...kindOf(i) });
  }
  return words;

  function kindOf(i: number): Pick<Word, 'kind' | 'form' | 'sure'> {
    const { start, end, lower } = pieces[i]!;
    const text = sentence.slice(start, end);
    const next = pieces[i + 1]?.lower ?? '';
    const plain = (kind: Kind): Pick<Word, 'kind' | 'form' | 'sure'> => ({ kind, form: null, sure: 1 });
    if (/^\d/.test(text)) return plain('number');
    // To the quay, but to run.
    if (lower === 'to')
      return plain(isThingAhead(next, sentence.charAt(pieces[i + 1]?.start ?? 0)) ? 'preposition' : 'to');
    if (SHORT_SUBJECT.test(lower))
      return { kind: 'subject', form: /'d$/.test(lower) ? 'past' : 's', sure: 1 };
    if (lower === 'her') return plain(/^[\p{L}]/u.test(next) && !isSmall(next) ? 'possessive' : 'object');
    const known = KINDS.find(([, words]) => words.has(lower));
    const isFirst = words.every(({ kind }) => kind === 'mark') || /^["“([]$/.test(words.at(-1)?.text ?? '');
    if (known && (isFirst || !/^\p{Lu}/u.test(text) || lower.startsWith('i'))) {
      const [kind] = known;
      if (kind !== 'helper') return plain(kind);
      return { kind, form: PAST_HELPERS.test(lower) ? 'past' : 's', sure: 1 };
    }
    if (/n't$/.test(lower)) return { kind: 'helper', form: 's', sure: 1 };
    if (/'s$|s'$/.test(lower) && !/^\p{Lu}/u.test(text)) return plain('possessive');
    if (/^\p{Lu}/u.test(text) && !isFirst) return plain('name');
    const readings = weighReadings(pieces, i, table);
    if (readings.length === 0) {
      if (/^\p{Lu}/u.test(text)) return plain('name');
      if (/ly$/.test(lower)) return plain('adverb');
      return { kind: 'noun', form: null, sure: 0.5 };
    }
    const sums = new Map<string, number>();
    for (const { part, likely } of readings) sums.set(part, (sums.get(part) ?? 0) + likely);
    const [part, sure] = [...sums].sort(([, one], [, other]) => other - one)[0]!;
    const form = readings.find((reading) => reading.part === 'v')?.form ?? null;
    return { kind: PARTS[part]!, form: part === 'v' ? (form as VerbForm) : null, sure };
  }
}

function isThingAhead(next: string, first: string): boolean {
  return (
    KINDS.some(
      ([kind, words]) => /^(?:determiner|possessive|object|pronoun|number)$/.test(kind) && words.has(next),
    ) ||
    /^\p{Lu}/u.test(first) ||
    /^her$|^\d/.test(next)
  );
}

/** The comma or full stop behind a number is a mark of its own: 4, and 4. */
function partNumber(piece: Piece): Piece[] {
  const [, digits, mark] = /^(\d.*?)([.,])$/.exec(piece.lower) ?? [];
  if (digits === undefined || mark === undefined) return [piece];
  const middle = piece.end - 1;
  return [
    { start: piece.start, end: middle, lower: digits },
    { start: middle, end: piece.end, lower: mark },
  ];
}

function isSmall(lower: string): boolean {
  return KINDS.some(([kind, words]) => kind !== 'number' && kind !== 'adverb' && words.has(lower));
}
