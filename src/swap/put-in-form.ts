import type { Piece } from './cut-words.ts';
import { type Irregulars, inflect } from './inflect.ts';
import type { Edit, Form, PartOfSpeech } from './types.ts';

/** Particles that come after a pronoun object: “put it out”, not “put out it”. */
const PARTICLES = /^(up|out|off|down|away|back|over|apart|together|aside)$/;
/** Matches verbs with their object inside: “make the sail bigger”, not “make bigger the sail”. */
const SPLIT = /^make (?!sure|up|out|off|use|do|fun|known|clear|peace|laws|light|public|again)/;
const PREPOSITIONS = /^(at|for|after|into|with|of|to|about|on|in|from|through|upon|without)$/;
const OBJECT_PRONOUNS = /^(it|them|him|her|me|us|you)$/;

/**
 * Returns the swap in the form that fits in place of the word at `at`, or null when it does not fit there. The swap is
 * inflected, and its last word is left out if that word follows anyway (asked about for inquired, before about). Some
 * verbs of several words do not fit:
 * - a phrasal verb before a pronoun (extinguished it: not put out it)
 * - a verb that ends in a preposition, without an object
 * - a verb whose object is inside it, before that object (made the sail bigger)
 */
export function putInForm(
  lemma: string,
  part: PartOfSpeech | 'as-is',
  form: Form,
  pieces: readonly Piece[],
  at: number,
  irregulars: Irregulars,
): string | null {
  let text = part === 'as-is' ? lemma : inflect(lemma, part, form, irregulars);
  if (text === null) return null;
  const before = pieces[at - 1]?.lower ?? '';
  if (/^(more|most) /.test(text) && /^(more|most)$/.test(before)) text = text.replace(/^\w+ /, '');
  const words = text.split(' ');
  const last = words.at(-1)!;
  const after = pieces[at + 1]?.lower ?? '.';
  if (words.length > 1 && last === after) return words.slice(0, -1).join(' ');
  if (before === words[0] && words.length > 1) return words.slice(1).join(' ');
  return part === 'v' && words.length > 1 && !mayStand(lemma, form, last, after) ? null : text;
}

/** Returns whether a verb of several words may come before `after`. `last` is the last of its words. */
function mayStand(lemma: string, form: Form, last: string, after: string): boolean {
  if (PARTICLES.test(last) && OBJECT_PRONOUNS.test(after)) return false;
  const hasObject = /^[\p{L}\d]/u.test(after) && !PREPOSITIONS.test(after);
  if (form === 'participle') return true;
  return hasObject ? !SPLIT.test(lemma) : !PREPOSITIONS.test(last);
}

/** Returns the text with the capitals of the word that it replaces: all capitals, a first capital, or none. */
export function likeCapitals(text: string, model: string): string {
  if (model.length > 1 && model === model.toUpperCase() && model !== model.toLowerCase())
    return text.toUpperCase();
  const [first = ''] = model;
  return first === first.toLowerCase() ? text : text.charAt(0).toUpperCase() + text.slice(1);
}

/** Returns the change of “a” or “an” before the word if the swap needs the other article: a huge, an enormous. */
export function correctArticle(
  sentence: string,
  before: Piece | undefined,
  text: string,
  takesOther: (word: string) => boolean,
): Edit | null {
  if (before === undefined || !/^an?$/.test(before.lower)) return null;
  const [first = ''] = text.toLowerCase().split(/[ -]/);
  const wantsAn = /^[aeiou]/.test(first) !== takesOther(first);
  if (wantsAn === (before.lower === 'an')) return null;
  const article = likeCapitals(wantsAn ? 'an' : 'a', sentence.slice(before.start, before.start + 1));
  return { start: before.start, end: before.end, text: article };
}
