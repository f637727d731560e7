import type { Speech } from '../accent/speech.ts';
import { analysedAs } from '../homographs/word-key.ts';
import type { WordKey } from '../types.ts';
import type { WordSource } from './judge.ts';
import { remember } from './remember.ts';
import { type WeighedWord, weighWord } from './weigh-word.ts';

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

/** Returns the data of a word on which standings depend. Each word is analysed once, with whatever capitals it is met. */
export function rememberAnalyses(analyzer: WordSource): (key: WordKey) => WeighedWord {
  const known = new Map<WordKey, WeighedWord>();
  return (key) => {
    const small = analysedAs(key);
    const before = known.get(small);
    if (before) return before;
    const weighed = weighWord(analyzer.analyze(key));
    known.set(small, weighed);
    return weighed;
  };
}
