/** The words of a list with blanks between them. */
export function wordSet(words: string): ReadonlySet<string> {
  return new Set(words.split(' '));
}
