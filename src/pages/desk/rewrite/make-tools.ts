import type { Analyzer, Judge } from '../../../analyze/index.ts';
import type { ShadedLine } from '../../../passage/shade-line.ts';
import type { RewriteTools } from '../../../rewrite/index.ts';
import { reachFor, type Swapper } from '../../../swap/index.ts';

/** Prefixes and a suffix that turn the rest of a word into its opposite. */
const DENYING = new Set('un dis im in ir il non less'.split(' '));

/** The tools that judge a rewriting: the passage's own shading, the engine, and the swaps. */
export function makeTools(
  shade: (line: string) => ShadedLine,
  judge: Judge,
  engine: Analyzer,
  swapper: Swapper,
  preTeach: readonly string[],
): RewriteTools {
  const taught = new Set(preTeach.map((word) => word.toLowerCase()));
  const reach = reachFor(judge);
  return {
    read: (text) =>
      shade(text).words.map(({ start, end, standing }) => ({
        start,
        end,
        standing: taught.has(text.slice(start, end).toLowerCase()) ? 'by-sight' : standing,
      })),
    baseOf: (word) => engine.analyze(word).readings[0]?.base ?? word,
    denies: (word) =>
      engine
        .analyze(word)
        .readings[0]?.affixes.some(
          ({ kind, text }) => (kind === 'prefix' || kind === 'suffix') && DENYING.has(text),
        ) ?? false,
    wordsFor: (sentence, start, end) => swapper.findSwaps(sentence, start, end, { reach }).swaps,
  };
}
