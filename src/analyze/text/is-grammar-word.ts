import listed from './grammar-words.json' with { type: 'json' };
import { wordSet } from './word-set.ts';

/** True for words of grammar, in lower case: the, then, isn't. Not for will, may and others that may be people too. */
export function isGrammarWord(word: string): boolean {
  const end = word.indexOf("'");
  return WORDS.has(end === -1 ? word : word.slice(0, end));
}

const WORDS = wordSet(listed.words);
