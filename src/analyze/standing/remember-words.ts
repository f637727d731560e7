import type { WordKey } from '../types.ts';
import type { WordAnalyzer } from './judge.ts';
import { remember } from './remember.ts';
import { type WeighedWord, weighWord } from './weigh-word.ts';

/** Gives of any word what a standing depends on. */
export interface WordWeigher {
  weigh(key: WordKey): WeighedWord;
}

/**
 * Remembers of every word what standings depend on, and nothing else of its analysis: a shelf asks for tens of thousands
 * of words again with every change of a group, and analysing a word takes a hundred times as long as looking at
 * what it requires.
 */
export function rememberWords(analyzer: WordAnalyzer): WordWeigher {
  return { weigh: remember((key: WordKey) => weighWord(analyzer.analyze(key))) };
}
