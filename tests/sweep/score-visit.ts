import { cutText, splitKey } from '../../src/analyze/index.ts';
import type { Visit } from './visit.ts';

/** What became of one page. */
export interface Outcome {
  readonly page: string;
  /** Why the page fails; empty when it does not. */
  readonly faults: readonly string[];
  readonly visit: Visit | null;
  /** Words of the expected story that were read, and words read that are expected, as shares; null where nothing is expected. */
  readonly recall: number | null;
  readonly precision: number | null;
}

/** The most the panel's figure may take, in milliseconds. */
export const FIGURE_LIMIT = 1500;

/** Whether a page fails; lenient, not for its times, which are the machine's. */
export function isFailed({ faults }: Outcome, lenient: boolean): boolean {
  return faults.some((fault) => !lenient || !/^figures after \d+ ms$/.test(fault));
}

/** Holds the record of a page to its expectations. `expected` is the text of its story, null where nobody wrote it down. */
export function scoreVisit(page: string, visit: Visit, expected: string | null): Outcome {
  const [before, during, after] = visit.states;
  const faults = [
    ...(visit.figure === null ? [`no figures: ${visit.says.replace(/\s+/g, ' ').slice(0, 600)}`] : []),
    ...(visit.figure !== null && visit.figure > FIGURE_LIMIT ? [`figures after ${visit.figure} ms`] : []),
    ...visit.errors,
    ...(['html', 'scroll', 'selection'] as const).flatMap((kind) => [
      ...(before![kind] === during![kind] ? [] : [`${kind} changed while shaded`]),
      ...(before![kind] === after![kind] ? [] : [`${kind} changed after the shading was taken away`]),
    ]),
  ];
  const read = countOf(visit.words.map(([key, count]) => [splitKey(key).word.toLowerCase(), count]));
  const wanted = expected === null ? null : countOf(wordsOf(expected).map((word) => [word, 1]));
  const shared = wanted && sum([...wanted].map(([word, count]) => Math.min(count, read.get(word) ?? 0)));
  return {
    page,
    faults,
    visit,
    recall: wanted && shared! / Math.max(sum([...wanted.values()]), 1),
    precision: wanted && shared! / Math.max(sum([...read.values()]), 1),
  };
}

/** The words of a text in small letters, cut as the extension cuts them. */
function wordsOf(text: string): string[] {
  return text
    .split('\n')
    .flatMap((line) => cutText(line))
    .filter(({ kind }) => kind === 'word')
    .map(({ key }) => splitKey(key).word.toLowerCase());
}

function countOf(words: readonly (readonly [string, number])[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const [word, count] of words) counts.set(word, (counts.get(word) ?? 0) + count);
  return counts;
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}
