/**
 * Whether a word, given in lower case, is written with a capital although it is no name to be told in advance:
 * I and its contractions, days, months, forms of address. Monday is judged like other words; Bram is a name.
 */
export function isCapitalWord(word: string): boolean {
  return words.has(word.replace(/'.*$/, ''));
}

const words: ReadonlySet<string> = new Set(
  (
    'i monday tuesday wednesday thursday friday saturday sunday january february march april may june july ' +
    'august september october november december mr mrs ms miss dr'
  ).split(' '),
);
