/** Regular expressions for the place of letters in a word, as sequences name it. The words must be separated by blanks. */
export const words = '(?:words?|syllables?|bases?|roots?|names?)';
const kindsOfWord =
  '(?:a|an|the|one|two|three|2|3|1|single|(?:short|long)[ -]vowel|short|long|longer|simple|base|syllable|multi|multisyllabic|multisyllable|many|some|most|other|all|closed|stressed|unstressed|or|more|and)';
export const ofWords = `(?: (?:of|in)(?: ${kindsOfWord})*(?: ${words})+)?`;
const place =
  '(?:end|ends|ending|start|beginning|middle|front|final position|initial position|medial position)';
export const at = `(?:at|in|on|from) (?:the |a )?(?:very )?${place}`;
