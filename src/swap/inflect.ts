import type { Form, PartOfSpeech } from './types.ts';

/**
 * Forms that no rule gives: the past of `go` is went. An empty string means that the form is not used: advice has no
 * plural.
 */
export interface Irregulars {
  get(lemma: string, part: PartOfSpeech, form: Form): string | undefined;
}

/**
 * Returns a form of a lemma of one or more words, or null when the lemma has no such form.
 * - In a verb of several words, only the first word is inflected (put out: putting out).
 * - In a noun, the last word is inflected (fish market: fish markets), or the word before a preposition (group of
 * ships: groups of ships).
 * - An adjective of two syllables or more takes more and most, unless it ends in -y (happier, more careful).
 */
export function inflect(
  lemma: string,
  part: PartOfSpeech,
  form: Form,
  irregulars: Irregulars,
): string | null {
  if (form === 'base') return lemma;
  const words = lemma.split(' ');
  const at = part === 'v' ? 0 : headOf(words);
  if (words.length > 1 && part !== 'v' && part !== 'n') return compared(lemma, form);
  const head = words[at]!;
  // “Tools” and “weapons” are already plural.
  if (part === 'n' && /[^aiusx]s$/.test(head) && irregulars.get(head, part, form) === undefined) return lemma;
  const inflected = irregulars.get(head, part, form) ?? byRule(head, part, form);
  if (inflected === '') return null;
  words[at] = inflected;
  return words.join(' ');
}

/** Returns the index of the word that is inflected in a noun. */
function headOf(words: readonly string[]): number {
  const after = words.findIndex(
    (word, i) => i > 0 && /^(of|in|on|for|to|by|with|from|before|and|or|who|without)$/.test(word),
  );
  return after < 0 ? words.length - 1 : after - 1;
}

/** Returns the regular form, by spelling alone: stop gives stopped. To give visited, visit must be listed as irregular. */
export function byRule(word: string, part: PartOfSpeech, form: Form): string {
  if (form === 's') return withS(word);
  if (form === 'ing') {
    if (/ie$/.test(word)) return word.replace(/ie$/, 'ying');
    return `${/[^aeouy]e$|ue$/.test(word) ? word.slice(0, -1) : doubled(word)}ing`;
  }
  if (form === 'past' || form === 'participle') return `${stem(word)}ed`;
  if (part === 'r' || !isShort(word)) return compared(word, form);
  return stem(word) + form;
}

function compared(word: string, form: Form): string {
  return `${form === 'er' ? 'more' : 'most'} ${word}`;
}

function withS(word: string): string {
  if (/[^aeiou]y$/.test(word)) return `${word.slice(0, -1)}ies`;
  return word + (/(s|x|z|ch|sh|[^aeiou]o)$/.test(word) ? 'es' : 's');
}

function stem(word: string): string {
  if (/[^aeiou]y$/.test(word)) return `${word.slice(0, -1)}i`;
  return word.endsWith('e') ? word.slice(0, -1) : doubled(word);
}

/**
 * Doubles the final consonant of a word of one syllable that ends in one vowel letter and one consonant: stop, plan.
 * Fix, show and seem stay as they are.
 */
function doubled(word: string): string {
  return /^[^aeiou]*(qu)?[aeiouy][bdgklmnprtvz]$/.test(word) ? word + word.at(-1) : word;
}

function isShort(word: string): boolean {
  const vowels = word.replace(/e$/, '').match(/[aeiouy]+/g)?.length ?? 1;
  return vowels < 2 || (vowels === 2 && /([^aeiou]y|[^aeiou]le|ow)$/.test(word) && !/[ai]ble$/.test(word));
}
