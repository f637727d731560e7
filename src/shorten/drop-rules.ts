import { adverbAt, mayGo } from './adverb-rules.ts';
import {
  endOf,
  endOfThing,
  findClause,
  findMainClause,
  findMarks,
  isFiniteVerb,
  isNot,
} from './find-clause.ts';
import { cutOf } from './make-cut.ts';
import type { Cut, Rule, Word } from './types.ts';
import wordings from './wordings.json';

const SENTENCE_ADVERBS = new Set(wordings.sentenceAdverbs);
const ADJECTIVES = new Set(wordings.adjectives);
const WEEKDAY = /^(?:monday|tuesday|wednesday|thursday|friday|saturday|sunday)$/;

/** Nouns that say little alone: a huge number, an amazing job. */
const LIGHT =
  /^(?:ones?|numbers?|amounts?|jobs?|deal|way|ways|thing|things|place|story|range|variety|kind|sort|portfolio|piece|sense|part|bit|shape|look|time|effort|degree|level|rate|example|area)$/;

/** Rules that take words out, the safest first. */
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
          // The majority of you is not most you.
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
        // Bram, however, ran: both commas go; a boat, however, that leaked: only behind a subject.
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
        const [before, after, after2] = [words[i - 1], words[i + 1], words[i + 2]];
        if (word.isInside || !ADJECTIVES.has(word.lower) || !before || !after) return [];
        const isBefore =
          /^(?:determiner|possessive)$/.test(before.kind) && !/^(?:all|both|such)$/.test(before.lower);
        const isNoun =
          (after.kind === 'noun' && after.sure > 0.7) ||
          (after.kind === 'adjective' && after2?.kind === 'noun');
        const isHead = after2 === undefined || after2.text !== '-';
        // What is so called is not left bare: a famous one, a poor man's.
        // It is a splendid boat: what it is said to be stays.
        const isSaid =
          /^(?:is|are|was|were|be|been|being|as|becomes?|became|'s|it's|that's|than|such|like)$/.test(
            words[i - 2]?.lower ?? '',
          );
        return isBefore &&
          !isSaid &&
          isNoun &&
          isHead &&
          !LIGHT.test(after.lower) &&
          !/[’']s$/.test(after.text)
          ? [cutOf(words, i, i + 1)]
          : [];
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
          // A letter in brackets stands for a letter: [T]he, boat(s).
          const isTied =
            words[close]!.end === words[close + 1]?.start && /\p{L}/u.test(words[close + 1]!.text);
          const isGlued = words[i - 1]!.end === word.start;
          // Its (artificial) stars; sour (bitter): one word is part of what is said. Brackets in brackets are left.
          const isOneWord = close === i + 2;
          if (words.slice(i + 1, close).some(({ text }) => /^[([]$/.test(text))) return [];
          // What explains a word or doubts it stays: a small gland; apparently true.
          const isNeeded =
            /^(?:an?|one|such|including|like)$/.test(words[i + 1]!.lower) || words[i + 1]!.kind === 'adverb';
          if (isTied || isGlued || isOneWord || isNeeded) return [];
          return [cutOf(words, i, close + 1)];
        })
        .concat(findDashed(words)),
  },
  {
    name: 'apposition',
    example: ['Bram, a boy of nine, ran to the quay.', 'Bram ran to the quay.'],
    counterExample: 'A rod, a net and a boat came by.',
    isSafe: true,
    applies: (words) =>
      findAsides(words).flatMap(({ start, end, cutEnd, isLast }): Cut[] => {
        const [first, second] = words.slice(start + 1);
        const before = words[start - 1];
        if (!first || !before || (before.kind !== 'noun' && before.kind !== 'name')) return [];
        const isThing = /^(?:a|an|the|his|her|their|its|our|my|one)$/.test(first.lower);
        // Bram, captain of the ferry, said so.
        const isBare =
          before.kind === 'name' &&
          cutEnd > end &&
          first.kind === 'noun' &&
          first.sure > 0.8 &&
          /^(?:of|at|for|in)$/.test(second?.lower ?? '');
        if (!isThing && !isBare) return [];
        const inner = words.slice(start + 1, end);
        if (endOfThing(words, start + 1) === null || hasFinite(words, start + 1, end)) return [];
        if (inner.some(({ lower, kind }) => /^(?:and|or|but|nor|,)$/.test(lower) || kind === 'clause'))
          return [];
        // Behind a row of things the last may be one of them: a rod, a net.
        // What is said of a thing at the end is often why it is named: water, a need of life.
        if (isLast && (before.kind !== 'name' || !/^(?:a|an)$/.test(first.lower))) return [];
        const isBeforePlace = words[end + 1]?.kind === 'preposition';
        if (isBeforePlace && before.kind !== 'name' && findMarks(words.slice(0, start), /^,$/).length > 0)
          return [];
        return [cutOf(words, start, cutEnd)];
      }),
  },
  {
    name: 'relative clause',
    example: ['Bram, who was nine, ran to the quay.', 'Bram ran to the quay.'],
    counterExample: 'The boy who was nine ran to the quay.',
    isSafe: true,
    applies: (words) =>
      findAsides(words).flatMap(({ start, end, cutEnd }): Cut[] => {
        const first = words[start + 1];
        if (
          !first ||
          !/^(?:who|which|whose|whom|where)$/.test(first.lower) ||
          !hasFinite(words, start + 1, end) ||
          end - start < 4
        )
          return [];
        const before = words[start - 1];
        if (!before || (before.kind !== 'noun' && before.kind !== 'name')) return [];
        // Who had waited: what was before is often the reason.
        if (words[start + 2]?.lower === 'had') return [];
        // Which holds water: what a thing always does explains it.
        if (words[start + 2]?.kind === 'verb' && words[start + 2]!.form !== 'past') return [];
        if (words.slice(start + 1, end).some(({ kind }) => kind === 'mark')) return [];
        return [cutOf(words, start, cutEnd)];
      }),
  },
  {
    name: 'participle clause',
    example: ['Bram ran home, wiping his hands on his coat.', 'Bram ran home.'],
    counterExample: 'Bram liked rowing, fishing and swimming.',
    isSafe: true,
    applies: (words) => {
      const found: Cut[] = [];
      for (const { start, end, cutEnd } of findAsides(words)) {
        // Before but, the contrary would be left without what it is of.
        if (words[end + 1]?.lower === 'but') continue;
        if (!isParticiple(words, start + 1, end) || isRowOfDoings(words, start, end)) continue;
        found.push(cutOf(words, start, cutEnd));
      }
      // With commas of its own: wiping his hands, his face and his hat.
      for (const comma of findMarks(words, /^,$/)) {
        const end = endOf(words);
        if (
          !isWholeClause(words, comma) ||
          isRowOfDoings(words, comma, end) ||
          !isParticiple(words, comma + 1, end, /^,$/)
        )
          continue;
        found.push(cutOf(words, comma, end));
      }
      return found;
    },
  },
  {
    name: 'day of the week',
    example: ['On Monday morning, the ferry sank.', 'The ferry sank.'],
    counterExample: 'On May 4, 1912, the ferry sank.',
    isSafe: false,
    applies: (words) => findDates(words),
  },
];

/** Runs of the words given, as pairs of places. */
function findRuns(words: readonly Word[], run: string): [number, number][] {
  const wanted = run.split(' ');
  return words.flatMap((word, i): [number, number][] => {
    if (word.isInside || word.lower !== wanted[0]) return [];
    return wanted.every((each, j) => words[i + j]?.lower === each) ? [[i, i + wanted.length]] : [];
  });
}

/** Between two dashes, with the subject before them and its verb behind, or a whole clause before and a preposition behind. */
function findDashed(words: readonly Word[]): Cut[] {
  const dashes = findMarks(words, /^[–—]$/);
  const [start, end] = dashes;
  if (start === undefined || end === undefined || dashes.length !== 2 || end - start < 2) return [];
  // A row of examples stays: smoke, dust, fumes.
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

/** The words before the comma are a main clause by themselves. */
export function isWholeClause(words: readonly Word[], comma: number): boolean {
  const before = words.slice(0, comma);
  if (before.some(({ isInside, text }, i) => /^["“”]$/.test(text) && !isInside && !before[i - 1]?.isInside))
    return false;
  return findMainClause(before) !== null;
}

function hasFinite(words: readonly Word[], from: number, to: number): boolean {
  for (let i = from; i < to; i++) {
    const { kind, form, sure } = words[i]!;
    if (kind === 'helper' || (kind === 'verb' && sure > 0.5 && (form === 'past' || form === 's')))
      return true;
  }
  return false;
}

interface Aside {
  /** Place of the comma before it. */
  readonly start: number;
  /** Place of the comma or of the end behind it. */
  readonly end: number;
  /** Where the cut ends: with the second comma or before it. */
  readonly cutEnd: number;
  readonly isLast: boolean;
}

/**
 * What may be an aside between two commas: behind a subject before its verb, behind an opening, or within a whole clause; or
 * behind the last comma of a whole clause.
 */
function findAsides(words: readonly Word[]): Aside[] {
  const commas = findMarks(words, /^,$/);
  const last = endOf(words);
  return commas.flatMap((start, i): Aside[] => {
    const end = commas[i + 1];
    if (words.slice(0, start).some(({ text, isInside }) => !isInside && /^[;:–—]$/.test(text))) return [];
    if (end === undefined)
      return isWholeClause(words, start) ? [{ start, end: last, cutEnd: last, isLast: true }] : [];
    const aside = (cutEnd: number): Aside[] => [{ start, end, cutEnd, isLast: false }];
    let verb = end + 1;
    while (words[verb]?.kind === 'adverb') verb++;
    const clause = findMainClause([...words.slice(0, start), ...words.slice(end + 1)]);
    if (isFiniteVerb(words, verb) && clause?.subjectEnd === start) return aside(end + 1);
    const next = words[end + 1];
    if (i === 0 && /^(?:preposition|clause)$/.test(words[0]!.kind) && findClause(words, end + 1))
      return aside(end);
    if (!next || !isWholeClause(words, start)) return [];
    if (next.kind === 'preposition') return aside(end + 1);
    return /^(?:and|but|so)$/.test(next.lower) && findClause(words, end + 2) ? aside(end) : [];
  });
}

/** A clause that begins with a verb in -ing, or with a participle and a small word behind it, and has no other verb. */
function isParticiple(words: readonly Word[], from: number, to: number, within = /^$/): boolean {
  let at = from;
  if (words[at]?.kind === 'adverb') at++;
  const first = words[at];
  if (!first || to - at < 2 || hasFinite(words, at + 1, to)) return false;
  if (
    words
      .slice(from, to)
      .some(({ kind, lower, text }) => (kind === 'mark' && !within.test(text)) || lower === 'or')
  )
    return false;
  // Being and including are more than a side.
  if (
    /^(?:including|being|during|according|regarding|concerning|depending|nothing|something|anything|everything|evening|morning|spring|string|king|ring|thing)$/.test(
      first.lower,
    )
  )
    return false;
  if (first.kind === 'verb' && first.form === 'ing' && first.sure > 0.8) return true;
  const next = words[at + 1];
  return (
    first.kind === 'verb' &&
    first.sure > 0.8 &&
    /^(?:participle|past)$/.test(first.form ?? '') &&
    /(?:ed|en|wn|ung|t)$/.test(first.lower) &&
    next !== undefined &&
    /^(?:by|with|in|from|of|at)$/.test(next.lower)
  );
}

/** Rowing, fishing and swimming: none of them is a side. */
function isRowOfDoings(words: readonly Word[], start: number, end: number): boolean {
  if (words[start - 1]?.form === 'ing') return true;
  return words
    .slice(start + 1, end)
    .some(({ lower }, i, inner) => lower === 'and' && inner[i + 1]?.form === 'ing' && i < 3);
}

/** On Monday, Monday morning: the day of the week at the beginning or the end. What is on no other day keeps it. */
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
