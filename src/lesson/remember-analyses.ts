import { type Analyzer, remember } from '../analyze/index.ts';

/** An analyser that analyses each word only once. A lesson needs the whole bank again for each group and step. */
export function rememberAnalyses(analyzer: Analyzer): Analyzer {
  const others = new Map<Analyzer, Analyzer>();
  const kept: Analyzer = {
    analyze: remember(analyzer.analyze),
    speaking(speech) {
      const spoken = analyzer.speaking(speech);
      if (spoken === analyzer) return kept;
      const made = others.get(spoken) ?? rememberAnalyses(spoken);
      others.set(spoken, made);
      return made;
    },
  };
  return kept;
}
