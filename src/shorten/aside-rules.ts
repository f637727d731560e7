import {
  endOf,
  endOfThing,
  findClause,
  findMainClause,
  findMarks,
  isFiniteVerb,
  isWholeClause,
} from './find-clause.ts';
import { cutOf } from './make-cut.ts';
import type { Cut, Rule, Word } from './types.ts';

interface Aside {
  /** The index of the comma before the aside. */
  readonly start: number;
  /** The index of the comma after the aside, or the index of the end of the sentence. */
  readonly end: number;
  /** The index where the cut ends, after the second comma or before it. */
  readonly cutEnd: number;
  readonly isLast: boolean;
}

/** Words in -ing that begin no participle clause, or begin one that is more than an aside. */
const NO_PARTICIPLE =
  /^(?:including|being|during|according|regarding|concerning|depending|nothing|something|anything|everything|evening|morning|spring|string|king|ring|thing)$/;

/** Rules that remove asides, between commas or after the last comma. */
export const ASIDE_RULES: readonly Rule[] = [
  {
    name: 'apposition',
    example: ['Bram, a boy of nine, ran to the quay.', 'Bram ran to the quay.'],
    counterExample: 'A rod, a net and a boat came by.',
    isSafe: true,
    applies: (words) =>
      cutAsides(
        words,
        (aside) => isBehindThing(words, aside) && isThing(words, aside) && !isNeeded(words, aside),
      ),
  },
  {
    name: 'relative clause',
    example: ['Bram, who was nine, ran to the quay.', 'Bram ran to the quay.'],
    counterExample: 'The boy who was nine ran to the quay.',
    isSafe: true,
    // A clause at the end of a sentence stays. Readers missed such a clause where it is the point of the sentence.
    applies: (words) =>
      cutAsides(
        words,
        (aside) =>
          !aside.isLast &&
          isBehindThing(words, aside) &&
          isRelativeClause(words, aside) &&
          !tellsOffice(words, aside),
      ),
  },
  {
    name: 'participle clause',
    example: ['Bram, wiping his hands on his coat, ran home.', 'Bram ran home.'],
    counterExample: 'Bram ran home, wiping his hands on his coat.',
    isSafe: true,
    // At the end of a sentence, the clause tells the result.
    applies: (words) =>
      cutAsides(
        words,
        ({ start, end, isLast }) =>
          !isLast &&
          // Before “but” or “and”, the following words would lose the words that they belong to.
          !/^(?:but|and)$/.test(words[end + 1]?.lower ?? '') &&
          isParticiple(words, start + 1, end) &&
          !isRowOfDoings(words, start, end),
      ),
  },
];

function cutAsides(words: readonly Word[], mayGo: (aside: Aside) => boolean): Cut[] {
  return findAsides(words)
    .filter(mayGo)
    .map(({ start, cutEnd }) => cutOf(words, start, cutEnd));
}

/**
 * Returns the possible asides. An aside between two commas comes after a subject and before its verb, after an opening,
 * or within a whole clause. An aside may also follow the last comma of a whole clause.
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

const OFFICE =
  /^(?:responsible|charge|chairs?|chaired|heads?|headed|leads?|led|runs?|ran|owns?|owned|manages?|managed|represents?|founded|teaches|taught|works?|worked|studies|studied)$/;

/**
 * Returns whether an aside tells the office of a person: “Mrs. Falk, who runs the ferry, says”. Without such an aside,
 * readers do not know why the person is asked.
 */
function tellsOffice(words: readonly Word[], { start, end }: Aside): boolean {
  return words.slice(start + 1, Math.min(end, start + 5)).some(({ lower }) => OFFICE.test(lower));
}

function isBehindThing(words: readonly Word[], { start }: Aside): boolean {
  return /^(?:noun|name)$/.test(words[start - 1]?.kind ?? '');
}

/**
 * Returns whether an aside is one thing without a verb: “a boy of nine”. After a name, “captain of the ferry” counts as
 * a thing too.
 */
function isThing(words: readonly Word[], { start, end, cutEnd }: Aside): boolean {
  const [before, first, second] = [words[start - 1], words[start + 1], words[start + 2]];
  if (!first) return false;
  const isBare =
    before?.kind === 'name' &&
    cutEnd > end &&
    first.kind === 'noun' &&
    first.sure > 0.8 &&
    /^(?:of|at|for|in)$/.test(second?.lower ?? '');
  if (!isBare && !/^(?:a|an|the|his|her|their|its|our|my|one)$/.test(first.lower)) return false;
  if (endOfThing(words, start + 1) === null || hasFinite(words, start + 1, end)) return false;
  return !words
    .slice(start + 1, end)
    .some(({ lower, kind }) => /^(?:and|or|but|nor|,)$/.test(lower) || kind === 'clause');
}

/**
 * Returns whether an aside has to stay. It may be the reason why a thing is named (“water, a need of life”) or the last
 * item of a list (“a rod, a net”).
 */
function isNeeded(words: readonly Word[], { start, end, isLast }: Aside): boolean {
  const isName = words[start - 1]?.kind === 'name';
  if (isLast && !(isName && /^an?$/.test(words[start + 1]?.lower ?? ''))) return true;
  const isBehindComma = findMarks(words.slice(0, start), /^,$/).length > 0;
  return !isName && words[end + 1]?.kind === 'preposition' && isBehindComma;
}

function isRelativeClause(words: readonly Word[], { start, end }: Aside): boolean {
  const [first, verb] = [words[start + 1], words[start + 2]];
  if (!/^(?:who|which|whose|whom|where)$/.test(first?.lower ?? '') || end - start < 4) return false;
  // “who had waited”: an earlier event is often the reason.
  if (verb?.lower === 'had') return false;
  // “which holds water”: a thing's usual behaviour explains the thing.
  if (verb?.kind === 'verb' && verb.form !== 'past') return false;
  return hasFinite(words, start + 1, end) && !words.slice(start + 1, end).some(({ kind }) => kind === 'mark');
}

/**
 * Returns whether a clause begins with a verb in -ing, or with a participle and a small word after it, and has no other
 * verb.
 */
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
  if (NO_PARTICIPLE.test(first.lower)) return false;
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

/** Returns whether the aside is part of a list of activities: “rowing, fishing and swimming”. None of these is an aside. */
function isRowOfDoings(words: readonly Word[], start: number, end: number): boolean {
  if (words[start - 1]?.form === 'ing') return true;
  return words
    .slice(start + 1, end)
    .some(({ lower }, i, inner) => lower === 'and' && inner[i + 1]?.form === 'ing' && i < 3);
}

function hasFinite(words: readonly Word[], from: number, to: number): boolean {
  for (let i = from; i < to; i++) {
    const { kind, form, sure } = words[i]!;
    if (kind === 'helper' || (kind === 'verb' && sure > 0.5 && (form === 'past' || form === 's')))
      return true;
  }
  return false;
}
