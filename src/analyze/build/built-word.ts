import type { Correspondence } from '../lexicon/word-record.ts';
import type { Affix } from '../types.ts';

/** A spelling inside a word. */
export interface WordSpelling extends Correspondence {
  /**
   * The letters before an ending changed them: the o of hoping spells `o_e`, the pp of hopping `p`, the i of ponies `y`. The pattern is that
   * of these letters.
   */
  readonly spells?: string;
  /** The sound of the letters before an ending weakened it: the y of happy in happily, the cial of special in specially. */
  readonly said?: string;
  /** The British sound where the position in the word does not decide it: the weak er of sister. */
  readonly heard?: string;
  /** These letters were an ending once, and are named as one: the i of funnier, from -y. */
  readonly wasSuffix?: true;
}

/** Spellings that form one part of a word: a base (cup and cake are two), an affix, or the letters after an apostrophe. */
export interface WordPart {
  readonly role: 'base' | 'prefix' | 'suffix' | 'clitic';
  readonly spellings: readonly WordSpelling[];
}

/** One way to say a word, before its patterns and syllables are named. */
export interface BuiltWord {
  readonly parts: readonly WordPart[];
  /** The innermost base, or null. */
  readonly base: string | null;
  /** The affixes, from the base outwards. */
  readonly affixes: readonly Affix[];
  /** The listed words that this word is directly built from: unwanted from wanted, someone from some and one. */
  readonly from?: readonly SourceWord[];
  /** The word has spellings of its own and only comes from those words: confusion from confuse. */
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
