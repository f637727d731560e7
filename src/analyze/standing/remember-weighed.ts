import type { Speech } from '../accent/speech.ts';
import type { WordSource } from './judge.ts';
import { remember } from './remember.ts';
import { rememberAnalyses } from './weigh-word.ts';

/**
 * Creates an analyser that caches the data of each word on which standings depend. Several judges and climbs of the
 * same words share the cache. Analysing a word takes a hundred times as long as looking at its requirements.
 */
export function rememberWeighed(analyzer: WordSource): WordSource {
  const recall = rememberAnalyses(analyzer);
  const others = remember(rememberWeighed);
  const remembering: WordSource = {
    analyze: recall,
    recall,
    speaking(speech: Speech) {
      const spoken = analyzer.speaking?.(speech) ?? analyzer;
      return spoken === analyzer ? remembering : others(spoken);
    },
  };
  return remembering;
}
