/** Whether a word contains letters: rain has ai, cake has a_e, feet has neither. */
export function fits(word: string, letters: string): boolean {
  const [vowel, e] = letters.split('_');
  if (e === undefined) return word.length > letters.length && word.includes(letters);
  const at = word.indexOf(vowel!);
  return at >= 0 && /^[^aeiou]{1,3}e/.test(word.slice(at + 1));
}

/**
 * Whether letters are part of a longer spelling. For example, `s` is part of `es`, but `a_e` is part of no other
 * spelling.
 */
export function isWithin(letters: string, longer: string): boolean {
  return longer.length > letters.length && longer.includes(letters);
}
