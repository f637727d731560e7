/**
 * Spellings that no English word of one syllable has by rule, though single words may (common practice, no source): a
 * made-up word must not match. Each with a word it keeps out and one it leaves; `q` stands for qu.
 */
export const ILLEGAL: readonly (readonly [spelling: RegExp, out: string, leaves: string])[] = [
  // v and j end no word, nor do i and u.
  [/[vj]$/, 'miv', 'mave'],
  [/[iu]$/, 'fli', 'flie'],
  // The sound k at the end is ck after one short vowel, k after anything else.
  [/c$/, 'mec', 'meck'],
  [/^[^aeiouy]*[aeiouy]k$/, 'mek', 'meck'],
  [/([^aeiouy]|[aeiou]{2})ck$/, 'meeck', 'meck'],
  // c before a, o, u and consonants, k before the rest.
  [/^s?k[aouy]/, 'kam', 'cam'],
  [/^s?k[^aeiouyn]/, 'klam', 'clam'],
  // f, l, s, z are doubled after one short vowel at the end, nothing else is.
  [/^[^aeiouy]*[aeiouy][flsz]$/, 'mef', 'meff'],
  [/(bb|cc|dd|gg|mm|nn|pp|rr|tt)$/, 'mett', 'met'],
  [/[aeiou]{2}(ff|ll|ss|zz)$/, 'meell', 'meel'],
  // tch and dge after one short vowel at the end, ch and ge after the rest.
  [/^[^aeiouy]*[aeiouy]ch$/, 'quich', 'quitch'],
  [/([^aeiouy]|[aeiou]{2})(tch|dge)$/, 'meetch', 'metch'],
  [/q[ouy]/, 'quog', 'quib'],
  // a after w and qu says o: swan, squash; not before k, g, ng: wag, quack.
  [/(w|wh|q)a(?![kgxyiw]|ck|ng|nk|[^aeiouy]e$)/, 'wab', 'wag'],
  // or after w says er: worm.
  [/wh?or/, 'worb', 'wirb'],
  // two at the beginning is the number.
  [/^two/, 'twoal', 'twail'],
  // g before e, i and y is hard in get and soft in gem.
  [/^g[eiy]/, 'gend', 'gand'],
  // An e behind two consonants is silent, and the vowel before it short, only in these: not paste, bathe, change.
  [/(?<!.n[cs]|r[cgsv]|dg|ls|[iu]ng)(?<=[^aeiouy]{2})e$/, 'plaste', 'blence'],
  // Hard to say, or seldom met: the same consonant before and after the vowel, r before er, w and y before u.
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
