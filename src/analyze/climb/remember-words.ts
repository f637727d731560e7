import type { Speech } from '../accent/speech.ts';
import type { WordSource } from '../standing/judge.ts';
import { remember, rememberFor } from '../standing/remember.ts';
import type { WordKey } from '../types.ts';
import { needsOfWord, type WordNeeds } from './word-needs.ts';

/** Returns the facts about a word on which a climb depends. */
export interface WordWeigher {
  weigh(key: WordKey): WordNeeds;
  /** Returns the facts about a word of a list to which words are only added, by its place in the list. */
  weighAt(keys: readonly WordKey[], place: number): WordNeeds;
  /** Returns the weigher for another accent. */
  speaking(speech: Speech): WordWeigher;
}

/**
 * Caches the facts about each word on which climbs depend, without the rest of its analysis. A shelf asks for tens of
 * thousands of words again after every change of a group. Analysing a word takes a hundred times as long as looking at
 * its requirements.
 */
export function rememberWords(analyzer: WordSource): WordWeigher {
  const others = remember(rememberWords);
  const weigh = remember((key: WordKey) => needsOfWord(key, analyzer.analyze(key)));
  // Finding a word by its string takes as long as following it through a sequence.
  const listOf = rememberFor((_: readonly WordKey[]): WordNeeds[] => []);
  const weigher: WordWeigher = {
    weigh,
    weighAt(keys, place) {
      const list = listOf(keys);
      list[place] ??= weigh(keys[place]!);
      return list[place];
    },
    speaking(speech) {
      const spoken = analyzer.speaking?.(speech) ?? analyzer;
      return spoken === analyzer ? weigher : others(spoken);
    },
  };
  return weigher;
}
