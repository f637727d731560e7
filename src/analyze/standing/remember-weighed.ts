import type { Speech } from '../accent/speech.ts';
import type { WordSource } from './judge.ts';
import { remember } from './remember.ts';
import { weighOnce } from './weigh-word.ts';

/**
 * Creates an analyser that caches the data of each word on which standings depend. Several judges and climbs of the
 * same words share the cache. Analysing a word takes a hundred times as long as looking at its requirements. `onNew` is
 * called before each analysis, so that the host can tell how many words the cache holds.
 */
export function rememberWeighed(analyzer: WordSource, onNew: () => void = () => undefined): WordSource {
  const recall = weighOnce({
    analyze: (key) => {
      onNew();
      return analyzer.analyze(key);
    },
  });
  const others = remember((spoken: WordSource) => rememberWeighed(spoken, onNew));
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
