import listed from './grammar-words.json' with { type: 'json' };

/** True for words of grammar, in lower case: the, then, isn't. Not for will, may and others that may be people too. */
export function isGrammarWord(word: string): boolean {
  const end = word.indexOf("'");
  return WORDS.has(end === -1 ? word : word.slice(0, end));
}

const WORDS = new Set(listed.words.split(' '));
