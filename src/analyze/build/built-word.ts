import type { Spelling } from '../lexicon/word-record.ts';
import type { Affix } from '../types.ts';

/** A spelling inside a word. */
export interface WordSpelling extends Spelling {
  /**
   * What the letters were before an ending changed them: the o of hoping spells `o_e`, the pp of hopping `p`,
   * the i of ponies `y`. The pattern is that of these letters.
   */
  readonly spells?: string;
}

/** Spellings that belong together: a base (cup and cake are two), an affix, what follows an apostrophe. */
export interface WordPart {
  readonly role: 'base' | 'prefix' | 'suffix' | 'clitic';
  readonly spellings: readonly WordSpelling[];
}

/** One way to say a word, before patterns and syllables are named. */
export interface BuiltWord {
  readonly parts: readonly WordPart[];
  /** The innermost base, or null. */
  readonly base: string | null;
  /** From the base outwards. */
  readonly affixes: readonly Affix[];
}

/** All spellings of a word in order. */
export function spellingsOf({ parts }: BuiltWord): readonly WordSpelling[] {
  return parts.length === 1 ? parts[0]!.spellings : parts.flatMap((part) => part.spellings);
}
