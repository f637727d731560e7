import type { Accent } from '../analyze/types.ts';
import { type VarietyKind, varietyOf } from './variety-table.ts';

/** A word in a text that belongs to the other variety. */
export interface ForeignWord {
  readonly start: number;
  readonly end: number;
  readonly text: string;
  /** The word of the group's own variety, with the capitals of the text. */
  readonly to: string;
  readonly kind: VarietyKind;
}

/** Matches a word, with its apostrophe if it is a contraction or a possessive. */
const WORD = /\p{L}+(?:['’]\p{L}+)?/gu;

/** Whether a word must not be shown to a group without a sentence: gray for a British group, grey for an American group. */
export function isForeign(word: string, accent: Accent): boolean {
  const { foreign } = varietyOf(accent);
  const small = word.toLowerCase();
  return foreign.has(small) || foreign.has(small.replace(/['’]s$/, ''));
}

/**
 * Returns the words of a text that only the other variety has, in text order. Words in names (Sydney Harbour) are left
 * out.
 */
export function findForeign(text: string, accent: Accent): ForeignWord[] {
  const { turns } = varietyOf(accent);
  const found: ForeignWord[] = [];
  for (const match of text.matchAll(WORD)) {
    const whole = match[0];
    const owner = /['’]s$/.exec(whole)?.[0] ?? '';
    const said = whole.slice(0, whole.length - owner.length);
    const turn = turns.get(said.toLowerCase());
    if (!turn) continue;
    const start = match.index;
    const end = start + said.length;
    if (isInName(text, start, end)) continue;
    found.push({ start, end, text: said, to: likeIn(said, turn.to), kind: turn.kind });
  }
  return found;
}

/**
 * Converts one of our own texts to a group's variety. Words in the table are replaced. `British|American` marks wording
 * for one place only.
 */
export function inVariety(text: string, accent: Accent): string {
  const { own } = varietyOf(accent);
  return text.replace(MARKED_OR_WORD, (whole, space = '', british?: string, american = '') => {
    if (british !== undefined) {
      const said = (accent === 'british' ? british : american).replaceAll('_', ' ');
      return said && space + said;
    }
    const [word = '', owner = ''] = whole.split(/(?=['’]s$)/);
    const to = own.get(word.toLowerCase());
    return to === undefined ? whole : likeIn(word, to) + owner;
  });
}

/**
 * Matches a mark with two wordings in one of our own texts: `cross|mad`, `teatime|snack_time`. An underscore stands for
 * a space. One side may be empty: `got|`. Matches a plain word too, as `WORD` does.
 */
const MARKED_OR_WORD = /( ?)([\p{L}'’_-]*)\|([\p{L}'’_-]*)|\p{L}+(?:['’]\p{L}+)?/gu;

/** Returns `to` with the capitals of `word`: Colour, COLOUR. */
function likeIn(word: string, to: string): string {
  if (word.length > 1 && word === word.toUpperCase()) return to.toUpperCase();
  if (/^\p{Lu}/u.test(word)) return to[0]!.toUpperCase() + to.slice(1);
  return to;
}

/**
 * Words for family members, which are written like names (Mum). These words and words that begin sentences (The
 * Harbour) are not part of a name.
 */
const FAMILY = /^(?:mums?|mummy|moms?|mommy|grandad|grandpa)$/i;
const NO_NAME =
  /^(?:the|an?|this|that|then|and|but|so|or|in|on|at|to|of|for|with|from|my|his|her|our|your|their|its|is|are|was|were|as|if|when|where|i|we|they|he|she|it|you|no|yes|oh|dear)$/i;

/**
 * Whether a word is part of a name: it has a capital and is next to another word with a capital (Sydney Harbour,
 * Theatre Royal).
 */
function isInName(text: string, start: number, end: number): boolean {
  const word = text.slice(start, end);
  if (!/^\p{Lu}\p{Ll}/u.test(word) || FAMILY.test(word)) return false;
  const before = /(\p{L}+) $/u.exec(text.slice(0, start))?.[1] ?? '';
  const after = /^ (\p{L}+)/u.exec(text.slice(end))?.[1] ?? '';
  const isName = (other: string): boolean => /^\p{Lu}\p{Ll}/u.test(other) && !NO_NAME.test(other);
  return isName(before) || isName(after);
}
