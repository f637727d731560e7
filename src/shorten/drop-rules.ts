import { adverbAt, mayGo } from './adverb-rules.ts';
import { ASIDE_RULES } from './aside-rules.ts';
import {
  endOf,
  findClause,
  findMainClause,
  findMarks,
  isFiniteVerb,
  isNot,
  isWholeClause,
} from './find-clause.ts';
import { cutOf } from './make-cut.ts';
import type { Cut, Rule, Word } from './types.ts';
import wordings from './wordings.json';

const SENTENCE_ADVERBS = new Set(wordings.sentenceAdverbs);
const ADJECTIVES = new Set(wordings.adjectives);
const WEEKDAY = /^(?:monday|tuesday|wednesday|thursday|friday|saturday|sunday)$/;

/** Matches nouns that mean little without their adjective: a huge number, an amazing job, a huge impact. */
const LIGHT =
  /^(?:ones?|numbers?|amounts?|jobs?|deal|way|ways|thing|things|place|story|range|variety|kind|sort|portfolio|piece|sense|part|bit|shape|look|time|effort|degree|level|rate|example|area|impact|effect|difference|influence|role)$/;
/** Matches words before a thing that describes, or is compared with, something else. */
const SAYS_WHAT_IT_IS =
  /^(?:is|are|was|were|be|been|being|as|becomes?|became|'s|it's|that's|than|such|like)$/;

/** Rules that remove words, the safest first. */
export const DROP_RULES: readonly Rule[] = [
  {
    name: 'long wording',
    example: ['They rowed in order to reach the quay.', 'They rowed to reach the quay.'],
    counterExample: 'The books are in order to the last page.',
    isSafe: true,
    applies: (words) =>
      Object.entries(wordings.longWordings).flatMap(([long, short]) =>
        findRuns(words, long)
          .filter(([, end]) => !/order to$/.test(long) || words[end]?.kind === 'verb')
          // “The majority of you” does not become “most you”.
          .filter(
            ([, end]) => !/ of$/.test(long) || !/^(?:subject|object|pronoun)$/.test(words[end]?.kind ?? ''),
          )
          .map(([start, end]) => cutOf(words, start, end, short)),
      ),
  },
  {
    name: 'sentence adverb',
    example: ['Unfortunately, the ferry was late.', 'The ferry was late.'],
    counterExample: 'Clearly marked boxes came off the ferry.',
    isSafe: true,
    applies: (words) => {
      const commas = findMarks(words, /^,$/);
      const found: Cut[] = [];
      const [first, second] = [commas[0], commas[1]];
      if (first !== undefined && isSentenceAdverb(words, 0, first) && findClause(words, first + 1))
        found.push(cutOf(words, 0, first + 1));
      for (const [i, comma] of commas.entries()) {
        const next = commas[i + 1];
        if (next === undefined || !isSentenceAdverb(words, comma + 1, next)) continue;
        const before = words.slice(0, comma);
        // “Bram, of course, ran” loses both commas. In “a boat, of course, that leaked” the words stay, because they
        // may go only after a subject and before its verb.
        if (isFiniteVerb(words, next + 1) && findClause([...before, ...words.slice(next + 1)], 0))
          found.push(cutOf(words, comma, next + 1));
      }
      if (
        second === undefined &&
        first !== undefined &&
        isEnd(words, first, (from, to) => isSentenceAdverb(words, from, to))
      )
        found.push(cutOf(words, first, endOf(words)));
      return found;
    },
  },
  {
    name: 'adverb',
    example: ['Bram suddenly grabbed the rope.', 'Bram grabbed the rope.'],
    counterExample: 'Bram hardly saw the rope.',
    isSafe: true,
    applies: (words) =>
      words.flatMap((_, i): Cut[] => {
        const place = adverbAt(words, i);
        return place !== null && mayGo(place) ? [cutOf(words, i, i + 1)] : [];
      }),
  },
  {
    name: 'row of adjectives',
    example: ['A long, treacherous road led up.', 'A long road led up.'],
    counterExample: 'The big, red and blue flag blew.',
    isSafe: true,
    applies: (words) =>
      findMarks(words, /^,$/).flatMap((comma): Cut[] => {
        const [det, one, other, noun] = [
          words[comma - 2],
          words[comma - 1],
          words[comma + 1],
          words[comma + 2],
        ];
        if (!det || !one || !other || !noun) return [];
        const isRow =
          /^(?:determiner|possessive)$/.test(det.kind) &&
          [one, other].every(({ kind, sure }) => kind === 'adjective' && sure > 0.7) &&
          noun.kind === 'noun' &&
          noun.sure > 0.7;
        if (!isRow) return [];
        return [cutOf(words, comma, comma + 2), cutOf(words, comma - 1, comma + 1)];
      }),
  },
  {
    name: 'adjective',
    example: ['An enormous wave hit the quay.', 'A wave hit the quay.'],
    counterExample: 'The wave was enormous.',
    isSafe: true,
    applies: (words) =>
      words.flatMap((word, i): Cut[] => {
        const isOne = !word.isInside && ADJECTIVES.has(word.lower);
        // “It is a splendid boat”: the description of the subject stays.
        if (!isOne || !opensThing(words[i - 1]) || SAYS_WHAT_IT_IS.test(words[i - 2]?.lower ?? '')) return [];
        // “I am no fan of a huge crowd”: the negation may apply to exactly this word.
        if (words.slice(Math.max(0, i - 5), i).some(isNot)) return [];
        // “A dismal dream that woke her”: the adjective gives the reason.
        if (/^(?:which|that|who)$/.test(words[i + 2]?.lower ?? '')) return [];
        return isBeforeHead(words, i + 1) ? [cutOf(words, i, i + 1)] : [];
      }),
  },
  {
    name: 'parenthesis',
    example: ['The ferry (see below) came in.', 'The ferry came in.'],
    counterExample: 'The boat(s) came in with [t]he crew.',
    isSafe: true,
    applies: (words) =>
      words
        .flatMap((word, i): Cut[] => {
          if (!/^[([]$/.test(word.text) || i === 0) return [];
          const close = words.findIndex((other, j) => j > i && /^[)\]]$/.test(other.text));
          if (close < 0 || close === i + 1) return [];
          // A bracketed letter inside a word belongs to that word: [T]he, boat(s).
          const isTied =
            words[close]!.end === words[close + 1]?.start && /\p{L}/u.test(words[close + 1]!.text);
          const isGlued = words[i - 1]!.end === word.start;
          // “Its (artificial) stars”, “sour (bitter)”: a single word is part of the statement. Brackets inside brackets
          // stay.
          const isOneWord = close === i + 2;
          if (words.slice(i + 1, close).some(({ text }) => /^[([]$/.test(text))) return [];
          // Words that explain a word or doubt it stay: “(a small gland)”, “(aka the tide table)”, “(apparently true)”.
          const isNeeded =
            /^(?:an?|one|such|including|like|aka|or|also|that|i)$/.test(words[i + 1]!.lower) ||
            words[i + 1]!.kind === 'adverb' ||
            /^(?:that|which|who)$/.test(words[i + 2]!.lower);
          if (isTied || isGlued || isOneWord || isNeeded) return [];
          return [cutOf(words, i, close + 1)];
        })
        .concat(findDashed(words)),
  },
  ...ASIDE_RULES,
  {
    name: 'day of the week',
    example: ['On Monday morning, the ferry sank.', 'The ferry sank.'],
    counterExample: 'On May 4, 1912, the ferry sank.',
    isSafe: false,
    applies: (words) => findDates(words),
  },
];

function opensThing(word: Word | undefined): boolean {
  if (!word || !/^(?:determiner|possessive)$/.test(word.kind)) return false;
  return !/^(?:all|both|such)$/.test(word.lower);
}

/**
 * Returns whether the next word is a noun that is clear by itself, or an adjective before a noun. Counter-examples: “a
 * famous one”, “a poor man's”.
 */
function isBeforeHead(words: readonly Word[], at: number): boolean {
  const [word, next] = [words[at], words[at + 1]];
  if (!word || LIGHT.test(word.lower) || /[’']s$/.test(word.text) || next?.text === '-') return false;
  return word.kind === 'noun' ? word.sure > 0.7 : word.kind === 'adjective' && next?.kind === 'noun';
}

/** Returns the runs of the given words, as pairs of start and end index. */
function findRuns(words: readonly Word[], run: string): [number, number][] {
  const wanted = run.split(' ');
  return words.flatMap((word, i): [number, number][] => {
    if (word.isInside || word.lower !== wanted[0]) return [];
    return wanted.every((each, j) => words[i + j]?.lower === each) ? [[i, i + wanted.length]] : [];
  });
}

/**
 * Finds words between two dashes. Either the subject comes before them and its verb after them, or a whole clause comes
 * before them and a preposition after them.
 */
function findDashed(words: readonly Word[]): Cut[] {
  const dashes = findMarks(words, /^[–—]$/);
  const [start, end] = dashes;
  if (start === undefined || end === undefined || dashes.length !== 2 || end - start < 2) return [];
  // A list of examples stays: “smoke, dust, fumes”.
  if (words.slice(start, end).some(({ text }) => text === ',')) return [];
  const clause = findMainClause([...words.slice(0, start), ...words.slice(end + 1)]);
  const isWithin = isFiniteVerb(words, end + 1) && clause?.subjectEnd === start;
  return isWithin || (isWholeClause(words, start) && words[end + 1]?.kind === 'preposition')
    ? [cutOf(words, start, end + 1)]
    : [];
}

function isSentenceAdverb(words: readonly Word[], from: number, to: number): boolean {
  return SENTENCE_ADVERBS.has(
    words
      .slice(from, to)
      .map(({ lower }) => lower)
      .join(' '),
  );
}

function isEnd(words: readonly Word[], comma: number, holds: (from: number, to: number) => boolean): boolean {
  return isWholeClause(words, comma) && holds(comma + 1, endOf(words));
}

/**
 * Finds a day of the week at the beginning or the end: “On Monday”, “Monday morning”. The day stays if the event is
 * tied to it.
 */
function findDates(words: readonly Word[]): Cut[] {
  const end = endOf(words);
  const isBound = words.some(
    (word) =>
      isNot(word) ||
      /^(?:will|set|due|begins?|starts?|until|through|scheduled|expected|between|from|record)$/.test(
        word.lower,
      ),
  );
  if (isBound) return [];
  return words.flatMap(({ lower, isInside }, i): Cut[] => {
    if (isInside || lower !== 'on' || !WEEKDAY.test(words[i + 1]?.lower ?? '')) return [];
    let at = i + 2;
    if (/^(?:morning|afternoon|evening|night)$/.test(words[at]?.lower ?? '')) at++;
    if (i === 0 && words[at]?.text === ',' && findClause(words, at + 1)) return [cutOf(words, 0, at + 1)];
    const isLast = at === end && i > 2 && isWholeClause(words, i);
    return isLast && /^(?:noun|object|name)$/.test(words[i - 1]!.kind) ? [cutOf(words, i, at)] : [];
  });
}
