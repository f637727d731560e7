import { cutWords, type Piece } from './cut-words.ts';
import { fitsAsIs, fitsPlace, placeOf, takesFollower } from './fit-place.ts';
import { isBound } from './is-bound.ts';
import { nearness, type SwapTable } from './open-swaps.ts';
import {
  findPhraseSwaps,
  type PhraseLists,
  type PhraseRules,
  type PhraseSwap,
  readPhraseRules,
} from './phrase-swaps.ts';
import { correctArticle, likeCapitals, putInForm } from './put-in-form.ts';
import { contextVector } from './sense-context.ts';
import { swapWeights as weights } from './swap-weights.ts';
import type { Reach, Swap, SwapOptions, SwapResult } from './types.ts';
import { type WeighedReading, weighReadings } from './weigh-readings.ts';

/** Finds swaps for words of sentences. */
export interface Swapper {
  /** Finds swaps for the word `sentence.slice(start, end)`. Never throws. Returns no swaps if there is no such word. */
  findSwaps(sentence: string, start: number, end: number, options?: SwapOptions): SwapResult;
}

const readsAll = (): Reach => 'reads';
const MOST = 10;
const RECOMMENDED = 3;
/**
 * The score of swaps for phrases. `LEFT_OUT` is the score of swaps that leave words out. Such swaps come after all
 * swaps that say the same.
 */
const PHRASE = 0.9;
const LEFT_OUT = 0.3;

/**
 * Creates a swapper for an opened table (`openSwaps`) and the lists of `phrase-swaps.json`. It keeps the vectors of
 * words it has met.
 */
export function createSwapper(table: SwapTable, phraseLists: PhraseLists): Swapper {
  let rules: PhraseRules | undefined;
  const findPhrases = (
    sentence: string,
    pieces: readonly Piece[],
    at: number,
    isPart: boolean,
  ): PhraseSwap[] => {
    rules ??= readPhraseRules(phraseLists);
    return findPhraseSwaps(sentence, pieces, at, isPart, table, rules);
  };
  return {
    findSwaps(sentence, start, end, { reach = readsAll, phrases = false } = {}) {
      const word = sentence.slice(start, end);
      const pieces = joinTarget(cutWords(sentence), sentence, start, end);
      const at = pieces.findIndex((piece) => piece.start === start && piece.end === end);
      const isThere = at >= 0;
      const isPart = isThere && isBound(pieces, at, table);
      const isPlain = isThere && !isName(sentence, pieces, at, table) && !isPartOfMore(sentence, start, end);
      const rated = isThere && !isPart ? rate(sentence, pieces, at, table) : [];
      const said = isPlain ? findPhrases(sentence, pieces, at, isPart) : [];
      const more = said
        .map((swap) => ratePhrase(swap, start, end))
        .filter(({ span, text }) => phrases || (span === undefined && text !== ''));
      const texts = new Set(more.map(({ text }) => text));
      const ranked = rank([...more, ...rated.filter(({ text }) => !texts.has(text))], reach);
      const swaps = ranked.slice(0, MOST).map(({ text, reads, score, article, span }) => ({
        text,
        reads,
        score,
        ...(article && { article }),
        ...(span && { span }),
      }));
      const best = isPlain ? countBest(ranked) : 0;
      return { word, swaps, best, alternatives: best > 0 ? [] : ['teach', 'leave'] };
    },
  };
}

interface Rated {
  readonly text: string;
  /** The words that the group has to read, if they are not the whole `text`. */
  readonly comes?: string;
  readonly span?: Swap['span'];
  readonly score: number;
  /** Whether the swap fits wherever the word has the same part of speech as in this sentence. */
  readonly sure: boolean;
  readonly article?: Swap['article'];
}

/** Returns every swap in the right form with its score, the best first. Each text occurs once. */
function rate(sentence: string, pieces: readonly Piece[], at: number, table: SwapTable): Rated[] {
  const target = pieces[at]!;
  const place = placeOf(pieces, at, table);
  // A sentence uses one name for a thing throughout, so a repeated noun is not replaced with certainty.
  const isNamedAgain = pieces.some(({ lower }, i) => i !== at && lower === target.lower);
  const context = contextVector(pieces, at, table);
  const rated = new Map<string, Rated>();
  const readings: readonly (WeighedReading | AsIs)[] = [
    { lemma: target.lower, part: 'as-is', form: 'base', likely: 1 },
    ...weighReadings(pieces, at, table),
  ];
  for (const { lemma: word, part, form, likely } of readings) {
    const found = table.candidates(word, part);
    const nearnesses = found.map(
      ({ lemma, sense }) =>
        weights.sense * nearness(context, table.senseVector(sense)) +
        weights.context * nearness(context, table.vector(lemma)),
    );
    const usual = nearnesses.reduce((a, b) => a + b, 0) / (nearnesses.length || 1);
    found.forEach((candidate, i) => {
      const text = putInForm(candidate.lemma, part, form, pieces, at, table);
      if (text === null || text === target.lower) return;
      const fits =
        part === 'as-is'
          ? fitsAsIs(text, place)
          : fitsPlace({ lemma: word, part, form }, candidate, text, place);
      if (!fits) return;
      const logit =
        logOdds(candidate.prior) + nearnesses[i]! - usual + weights.part * Math.log(Math.max(likely, 0.001));
      const score = 1 / (1 + Math.exp(-logit));
      const sure =
        candidate.sure &&
        likely >= weights.settled &&
        (part === 'as-is' || takesFollower({ lemma: word, part, form }, candidate, text, place)) &&
        !(part === 'n' && (isNamedAgain || (form === 'base' && place.isBeforeNoun)));
      const known = rated.get(text);
      if (known && (known.sure !== sure ? known.sure : score <= known.score)) return;
      const article = correctArticle(sentence, pieces[at - 1], text, table.takesOtherArticle);
      rated.set(text, {
        text: likeCapitals(text, sentence.slice(target.start, target.end)),
        score: Math.round(score * 1000) / 1000,
        sure,
        ...(article && { article }),
      });
    });
  }
  return [...rated.values()].sort((one, other) => other.score - one.score);
}

function ratePhrase({ start, end, text, comes, article }: PhraseSwap, from: number, to: number): Rated {
  return {
    text,
    comes,
    score: comes === '' ? LEFT_OUT : PHRASE,
    sure: true,
    ...(article && { article }),
    ...((start !== from || end !== to) && { span: { start, end } }),
  };
}

interface AsIs {
  readonly lemma: string;
  readonly part: 'as-is';
  readonly form: 'base';
  readonly likely: number;
}

const WORDS = /[\p{L}\d][\p{L}\d'’-]*/gu;

/**
 * Sorts readable swaps first. Among them, swaps that practise the step come slightly before equals. Nonsense is left
 * out.
 */
function rank(rated: readonly Rated[], reach: (word: string) => Reach): (Swap & Rated)[] {
  const ranked = rated
    .filter(({ score, sure }) => sure || score >= weights.shown)
    .map((swap) => {
      const words = (swap.comes ?? swap.text).match(WORDS) ?? [];
      const reaches = words.map((word) => (/^\d/.test(word) ? 'reads' : reach(word)));
      const reads = reaches.every((each) => each !== 'not');
      const fresh = reads && reaches.length > 0 && !reaches.includes('reads');
      return {
        swap: { ...swap, reads },
        order: swap.score + (fresh ? 0.03 : 0) + (reads ? 2 : 0) + (swap.sure ? weights.sure : 0),
      };
    });
  return ranked.sort((one, other) => other.order - one.order).map(({ swap }) => swap);
}

/**
 * Whether a word is likely part of a name (Mark), because names have no swaps. Such a word has a capital in mid
 * sentence or before another capital. The first word of a title in quotes also counts (Bram read “Creatures of the
 * Shore”). So does a word in capitals alone (NET), unless the whole sentence is in capitals.
 */
function isName(sentence: string, pieces: readonly Piece[], at: number, table: SwapTable): boolean {
  const [before, { start, end }, after] = [pieces[at - 1], pieces[at]!, pieces[at + 1]];
  const word = sentence.slice(start, end);
  if (/^\p{Lu}{2,}$/u.test(word) && /\p{Ll}/u.test(sentence)) return true;
  if (!/^\p{Lu}\p{Ll}/u.test(word)) return false;
  if (before !== undefined && /^[\p{L}\d,;]/u.test(before.lower)) return true;
  const isQuoted = before !== undefined && /^["“‘]$/.test(before.lower);
  if (isQuoted && /^[\p{L}\d]/u.test(pieces[at - 2]?.lower ?? '')) return true;
  const isCapital = after !== undefined && /^\p{Lu}\p{Ll}/u.test(sentence.slice(after.start, after.end));
  return isCapital && (table.shares(pieces[at]!.lower)?.[0] ?? 0) > 0.3;
}

/**
 * Whether a word is joined to its neighbour by a hyphen, a slash or a mark of code. It is then only part of something
 * else.
 */
function isPartOfMore(sentence: string, start: number, end: number): boolean {
  return (
    /[-–/@#_.]$/.test(sentence.slice(Math.max(0, start - 1), start)) || /^[-/@_([]/.test(sentence.slice(end))
  );
}

function countBest(ranked: readonly (Swap & Rated)[]): number {
  const first = ranked.findIndex(({ reads, sure }) => !reads || !sure);
  return Math.min(RECOMMENDED, first < 0 ? ranked.length : first);
}

/**
 * Returns the pieces with the requested range as one of them. The range may be several words, or part of a word with a
 * hyphen.
 */
function joinTarget(
  pieces: readonly Piece[],
  sentence: string,
  start: number,
  end: number,
): readonly Piece[] {
  if (!(start < end) || sentence.slice(start, end).trim() === '') return pieces;
  const lower = sentence.slice(start, end).toLowerCase().replaceAll('’', "'");
  return [
    ...pieces.filter((piece) => piece.end <= start),
    { start, end, lower },
    ...pieces.filter((piece) => piece.start >= end),
  ];
}

function logOdds(share: number): number {
  const kept = Math.min(0.99, Math.max(0.002, share));
  return Math.log(kept / (1 - kept));
}
