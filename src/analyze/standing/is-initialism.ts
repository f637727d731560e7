import { isGrammarWord } from '../text/is-grammar-word.ts';
import type { Usage } from '../types.ts';

/**
 * Initialisms that look like words, and initialisms that are pronounced like words and are therefore listed (WordNet
 * writes them in capitals).
 */
const LISTED: ReadonlySet<string> = new Set(
  (
    'us it who am pm ok id ad led aids sat act pin sim ram rom url inc awol dink wimp wasp nasa nato opec unicef unesco gatt nafta ' +
    'amex nasdaq fema noaa nist darpa asean osha sars sids nimby lasik ascii unix swat fifa uefa cobol'
  ).split(' '),
);
/** Two-letter words, without grammar words, that are shouted: NO, GO. */
const SHORT_WORDS: ReadonlySet<string> = new Set('go oh hi ah eh ha ho ow ox ax pi'.split(' '));
/** Maximum length of an initialism. Longer words are hardly ever made of first letters: UNICEF has six. */
const LONGEST = 6;

/**
 * True if a word is made of the first letters of other words: UK, HIV, NATO, the US. The word is written in capitals in
 * a text that is not. STOP is only a shouted word, and WILMA is no initialism either. `word` is in lower case, and
 * `usage` is from the table.
 */
export function isInitialism(word: string, usage: Usage | null): boolean {
  const bare = word.replace(/'s$/, '');
  if (LISTED.has(bare)) return true;
  if (isGrammarWord(bare)) return false;
  if (bare.length === 2) return !SHORT_WORDS.has(bare);
  if (bare.length === 3) return usage !== 'common';
  return bare.length <= LONGEST && usage === null;
}
