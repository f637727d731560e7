import { catalogue } from '../catalogue/catalogue.ts';
import type { PatternId } from '../types.ts';
import { fits } from './fits.ts';
import { headingPhrases } from './heading-phrases.ts';
import { plainPhrases } from './plain-phrases.ts';

/** A technical phrase: the patterns it teaches, and the patterns that a list of letters beside it can mean. */
export interface Phrase {
  readonly ids: readonly PatternId[];
  /** Whether the phrase is definite. It is false if the phrase leaves open which of many patterns are meant. */
  readonly sure: boolean;
  /** Whether the phrase names a sound, not letters. */
  readonly sound?: true;
  /** Patterns that a list beside the phrase can mean. Null means that the phrase takes no list (compound words). */
  readonly within: ReadonlySet<PatternId> | null;
  /**
   * Patterns that the phrase teaches even beside a list. For example, "closed syllables" teaches that syllables are
   * closed, in addition to their vowels.
   */
  readonly keeps: readonly PatternId[];
}

/** The most words in a phrase. */
export const LONGEST_PHRASE = 6;

const letters = new Map(catalogue.map((row) => [row.id, row.letters]));
const phrases = new Map<string, Phrase>();
for (const [names, ids] of Object.entries(plainPhrases)) {
  for (const name of names.split('|')) {
    // "silent h" may be the h of hour, ghost or rhyme.
    // "Longer words" may only name the words in which something else is read.
    const sure = (!name.startsWith('silent') || ids.length === 1) && !/^(?:multi|poly|longer)/.test(name);
    phrases.set(name, { ids, sure, within: null, keeps: [] });
  }
}
for (const [names, ids, sure, within] of headingPhrases) {
  const keeps = ids.filter((id) => id === 'type-closed' || id === 'type-open');
  for (const name of names.split('|')) phrases.set(name, { ids, sure, within: new Set(within), keeps });
}

const firstWords = new Set([...phrases.keys()].map((name) => name.split(' ')[0]!));

/** Whether any phrase begins with a word. This avoids a search for longer phrases. */
export function beginsPhrase(word: string): boolean {
  return firstWords.has(singular(word));
}

/** Finds a phrase by its words in lower case, without hyphens. "syllables" is found as "syllable". */
export function findPhrase(words: readonly string[]): Phrase | null {
  return phrases.get(words.map(singular).join(' ')) ?? null;
}

function singular(word: string): string {
  return word.length > 3 && word.endsWith('s') && !word.endsWith('ss') ? word.slice(0, -1) : word;
}

/** Whether two headings can mean the same patterns. */
export function overlap({ within: one }: Phrase, { within: other }: Phrase): boolean {
  return one !== null && other !== null && [...one].some((id) => other.has(id));
}

/**
 * Whether a word shows the pattern that a heading teaches. For short a, the word `at` shows the pattern and the word
 * `it` does not.
 */
export function shows(word: string, { ids }: Phrase): boolean {
  return ids.some((id) => {
    const [first = ''] = letters.get(id)!.split(' ');
    return first !== '' && fits(word, first);
  });
}
