import type { Analyzer } from '../analyze/index.ts';
import type { WordAnalysis, WordKey } from '../analyze/types.ts';

/** The same analyser, which takes each word apart once: a lesson asks for the whole bank again for each group and step. */
export function rememberAnalyses({ analyze }: Analyzer): Analyzer {
  const known = new Map<WordKey, WordAnalysis>();
  return {
    analyze(key) {
      let analysis = known.get(key);
      if (analysis === undefined) {
        analysis = analyze(key);
        known.set(key, analysis);
      }
      return analysis;
    },
  };
}
