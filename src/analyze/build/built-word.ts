import type { Correspondence } from '../lexicon/word-record.ts';
import type { Affix } from '../types.ts';

/** A spelling inside a word. */
export interface WordSpelling extends Correspondence {
  /**
   * The letters as they were before an ending changed them. The pattern belongs to these letters. The o of hoping
   * spells `o_e`, the pp of hopping spells `p`, and the i of ponies spells `y`.
   */
  readonly spells?: string;
  /**
   * The sound that the letters had before an ending weakened it: the y of happy in happily, the cial of special in
   * specially.
   */
  readonly said?: string;
  /** The British sound where the position in the word does not decide it: the weak er of sister. */
  readonly heard?: string;
  /** Set if these letters were once an ending and are still named as that ending: the i of funnier, from -y. */
  readonly wasSuffix?: true;
}

/** Spellings that form one part of a word: a base (cup and cake are two), an affix, or the letters after an apostrophe. */
export interface WordPart {
  readonly role: 'base' | 'prefix' | 'suffix' | 'clitic';
  readonly spellings: readonly WordSpelling[];
}

/** One pronunciation of a word, before its patterns and syllables are named. */
export interface BuiltWord {
  readonly parts: readonly WordPart[];
  /** The innermost base, or null. */
  readonly base: string | null;
  /** The affixes, from the base outwards. */
  readonly affixes: readonly Affix[];
  /** The listed words that this word is directly built from: unwanted from wanted, someone from some and one. */
  readonly from?: readonly SourceWord[];
  /** Set if the word has its own spellings and is only derived from the words in `from`: confusion from confuse. */
  readonly ownSpellings?: true;
}

/** A word that another word is made of. */
export interface SourceWord {
  readonly word: string;
  readonly built: BuiltWord;
}

/** All spellings of a word in order. */
export function spellingsOf({ parts }: BuiltWord): readonly WordSpelling[] {
  return parts.length === 1 ? parts[0]!.spellings : parts.flatMap((part) => part.spellings);
}
