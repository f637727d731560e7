import { isGrammarWord } from './is-grammar-word.ts';

/**
 * Whether a capital that no sentence start explains may make a word a name: a capital first letter with small ones
 * (Duke), no word of grammar (The), not capitals throughout (STOP).
 */
export function mayBeName(key: string): boolean {
  return /^\p{Lu}/u.test(key) && /\p{Ll}/u.test(key) && !isGrammarWord(key.toLowerCase());
}
