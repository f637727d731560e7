/** Returns the words of a list that is separated by blanks. */
export function wordSet(words: string): ReadonlySet<string> {
  return new Set(words.split(' '));
}
