import { type Analyzer, remember } from '../analyze/index.ts';

/** An analyser that analyses each word only once. A lesson needs the whole bank again for each group and step. */
export function rememberAnalyses(analyzer: Analyzer): Analyzer {
  const others = remember(rememberAnalyses);
  const kept: Analyzer = {
    analyze: remember(analyzer.analyze),
    speaking(speech) {
      const spoken = analyzer.speaking(speech);
      return spoken === analyzer ? kept : others(spoken);
    },
  };
  return kept;
}
