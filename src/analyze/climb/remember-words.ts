import type { Speech } from '../accent/speech.ts';
import type { WordSource } from '../standing/judge.ts';
import { remember } from '../standing/remember.ts';
import type { WordKey } from '../types.ts';
import { needsOfWord, type WordNeeds } from './word-needs.ts';

/** Gives of any word what a climb depends on. */
export interface WordWeigher {
  weigh(key: WordKey): WordNeeds;
  /** The same in another accent. */
  speaking(speech: Speech): WordWeigher;
}

/**
 * Remembers of every word what climbs depend on, and nothing else of its analysis: a shelf asks for tens of thousands
 * of words again with every change of a group, and analysing a word takes a hundred times as long as looking at
 * what it requires.
 */
export function rememberWords(analyzer: WordSource): WordWeigher {
  const others = new Map<string, WordWeigher>();
  const weigher: WordWeigher = {
    weigh: remember((key: WordKey) => needsOfWord(key, analyzer.analyze(key))),
    speaking(speech) {
      const spoken = analyzer.speaking?.(speech) ?? analyzer;
      if (spoken === analyzer) return weigher;
      const name = `${speech.accent} ${speech.bath}`;
      const made = others.get(name) ?? rememberWords(spoken);
      others.set(name, made);
      return made;
    },
  };
  return weigher;
}
