import type { Piece } from './cut-words.ts';
import { type Irregulars, inflect } from './inflect.ts';
import type { Edit, Form, PartOfSpeech } from './types.ts';

/** Words that a pronoun goes before: put it out, not put out it. */
const PARTICLES = /^(up|out|off|down|away|back|over|apart|together|aside)$/;
/** Their object is inside: make the sail bigger, not make bigger the sail. */
const SPLIT = /^make (?!sure|up|out|off|use|do|fun|known|clear|peace|laws|light|public|again)/;
const PREPOSITIONS = /^(at|for|after|into|with|of|to|about|on|in|from|through|upon|without)$/;
const OBJECT_PRONOUNS = /^(it|them|him|her|me|us|you)$/;

/**
 * The swap as it has to be in place of the word at `at`: inflected, without a last word that follows anyway
 * (asked about for inquired, before about), or null when it cannot be there. A phrasal verb cannot before a
 * pronoun (extinguished it: not put out it), one that ends in a preposition not without an object,
 * one whose object is inside not before it (made the sail bigger).
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

/** Whether a verb of several words, of which `last` is the last, may be before `after`. */
function mayStand(lemma: string, form: Form, last: string, after: string): boolean {
  if (PARTICLES.test(last) && OBJECT_PRONOUNS.test(after)) return false;
  const hasObject = /^[\p{L}\d]/u.test(after) && !PREPOSITIONS.test(after);
  if (form === 'participle') return true;
  return hasObject ? !SPLIT.test(lemma) : !PREPOSITIONS.test(last);
}

/** With the capitals of the word it replaces: all, the first, or none. */
export function likeCapitals(text: string, model: string): string {
  if (model.length > 1 && model === model.toUpperCase() && model !== model.toLowerCase())
    return text.toUpperCase();
  const [first = ''] = model;
  return first === first.toLowerCase() ? text : text.charAt(0).toUpperCase() + text.slice(1);
}

/** The change of the a or an before the word, if the swap needs the other: a huge, an enormous. */
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
