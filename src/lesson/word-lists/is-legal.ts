/**
 * Spellings that no English word of one syllable has by rule, though single words may (common practice, no source). A
 * made-up word must not match any of these. Each spelling has a word that it excludes and a word that it allows. `q`
 * represents qu.
 */
export const ILLEGAL: readonly (readonly [spelling: RegExp, out: string, leaves: string])[] = [
  // No word ends in v, j, i or u.
  [/[vj]$/, 'miv', 'mave'],
  [/[iu]$/, 'fli', 'flie'],
  // At the end the sound k is spelt ck after one short vowel, and k after anything else.
  [/c$/, 'mec', 'meck'],
  [/^[^aeiouy]*[aeiouy]k$/, 'mek', 'meck'],
  [/([^aeiouy]|[aeiou]{2})ck$/, 'meeck', 'meck'],
  // The sound k is spelt c before a, o, u and consonants, and k before the rest.
  [/^s?k[aouy]/, 'kam', 'cam'],
  [/^s?k[^aeiouyn]/, 'klam', 'clam'],
  // At the end f, l, s and z are doubled after one short vowel. Nothing else is doubled.
  [/^[^aeiouy]*[aeiouy][flsz]$/, 'mef', 'meff'],
  [/(bb|cc|dd|gg|mm|nn|pp|rr|tt)$/, 'mett', 'met'],
  [/[aeiou]{2}(ff|ll|ss|zz)$/, 'meell', 'meel'],
  // At the end tch and dge come after one short vowel, and ch and ge come after the rest.
  [/^[^aeiouy]*[aeiouy]ch$/, 'quich', 'quitch'],
  [/([^aeiouy]|[aeiou]{2})(tch|dge)$/, 'meetch', 'metch'],
  [/q[ouy]/, 'quog', 'quib'],
  // After w and qu the letter a is pronounced o (swan, squash), but not before k, g and ng (wag, quack).
  [/(w|wh|q)a(?![kgxyiw]|ck|ng|nk|[^aeiouy]e$)/, 'wab', 'wag'],
  // After w the letters or are pronounced er: worm.
  [/wh?or/, 'worb', 'wirb'],
  // The letters two at the beginning are read as the number.
  [/^two/, 'twoal', 'twail'],
  // g before e, i and y is hard in get and soft in gem.
  [/^g[eiy]/, 'gend', 'gand'],
  // After two consonants an e is silent, and the vowel before them is short, only if the letters are among these. In
  // paste, bathe and change they are not.
  [/(?<!.n[cs]|r[cgsv]|dg|ls|[iu]ng)(?<=[^aeiouy]{2})e$/, 'plaste', 'blence'],
  // Hard to pronounce, or rare: the same consonant before and after the vowel, r before er, w and y before u.
  [/([^aeiouy]+)[aeiouy]+\1/, 'blill', 'blim'],
  [/r[aeiou]r/, 'prer', 'per'],
  [/[lr][aeiou]+rl/, 'lirl', 'birl'],
  [/q(?:ew|ue|ui|oo|ou)/, 'quew', 'queck'],
  [/[wy]u/, 'wum', 'wim'],
  [/(q|ch|sh|wh|th|j)y$/, 'chy', 'gly'],
];

/** Whether letters look like an English word of one syllable: mave, not miv. */
export function isLegal(letters: string): boolean {
  return letters.length > 2 && !ILLEGAL.some(([spelling]) => spelling.test(letters.replace('qu', 'q')));
}
