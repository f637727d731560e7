import { isCapitalWord } from './capital-words.ts';
import type { WeighedWord } from './weigh-word.ts';

/**
 * Bram and Bram's when Bram is listed; a word that is met only as a name (Wilma, also where a sentence starts);
 * a word with a capital in mid sentence that is not common (Falk), nor Monday or I'm. The Harbour is a word.
 * `names` are in lower case.
 */
export function isName(
  shown: string,
  { usage }: Pick<WeighedWord, 'usage'>,
  names: ReadonlySet<string>,
): boolean {
  const word = shown.toLowerCase();
  if (names.has(word) || (word.includes("'") && names.has(word.replace(/'s?$/, '')))) return true;
  return (usage === 'name' || (usage !== 'common' && shown !== word)) && !isCapitalWord(word);
}
