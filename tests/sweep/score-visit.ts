import { cutText, splitKey } from '../../src/analyze/index.ts';
import type { Visit } from './visit.ts';

/** The result of the visit to one page. */
export interface Outcome {
  readonly page: string;
  /** The reasons why the page fails. Empty if the page does not fail. */
  readonly faults: readonly string[];
  readonly visit: Visit | null;
  /**
   * Two shares: the words of the expected story that were read, and the words read that are expected. Null if nothing
   * is expected.
   */
  readonly recall: number | null;
  readonly precision: number | null;
}

/** The longest time that the panel may take to show its figure, in milliseconds. */
export const FIGURE_LIMIT = 1500;

/** Returns whether a page fails. If lenient, ignores its times, which depend on the machine. */
export function isFailed({ faults }: Outcome, lenient: boolean): boolean {
  return faults.some((fault) => !lenient || !/^figures after \d+ ms$/.test(fault));
}

/**
 * Compares the record of a page with the expectations for the page. `expected` is the text of its story, or null if
 * nobody wrote the story down.
 */
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

/** Returns the words of a text in lower case, split in the same way as in the extension. */
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
