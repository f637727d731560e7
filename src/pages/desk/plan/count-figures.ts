import { findSentences } from '../../../passage/find-sentences.ts';
import type { CountWords } from './possible-changes.ts';

/** The figures that measure a plan. */
export interface Figures {
  /** The percentage of words that the group can read. */
  readonly readable: number;
  /** The number of words that are not yet decodable. */
  readonly left: number;
  /** The number of words in the longest sentence. */
  readonly longest: number;
}

export function countFigures(text: string, count: CountWords): Figures {
  const { words, beyond } = count(text);
  const lengths = text.split('\n').flatMap((line) => findSentences(line).map((sentence) => sentence.words));
  return {
    readable: words === 0 ? 100 : ((words - beyond) / words) * 100,
    left: beyond,
    longest: Math.max(0, ...lengths),
  };
}
