import { type BuiltWord, spellingsOf } from '../build/built-word.ts';
import { placeSpellings } from '../build/place-spellings.ts';

/** Where a token's spelling belongs: to a base, to one that joins a base before it (the c of pancake), to an affix. */
export type TokenRole = 'base' | 'joined' | 'prefix' | 'suffix';

/**
 * One step through the letters of a word. Unlike a spelling it says which letters it is on, so that a word
 * is its tokens' texts in a row: the p of hope is on `pe`.
 */
export interface GuessToken {
  readonly role: TokenRole;
  /** The letters of the word it covers, the silent e that closes a split vowel among them. */
  readonly text: string;
  readonly letters: string;
  readonly sound: string;
  /** As in build/built-word.ts: the o of hoping spells `o_e`. */
  readonly spells?: string;
  /** The main stress of the word falls on it; only tokens of the model know. */
  readonly stressed?: boolean;
}

/** A built word as tokens, the first first; null when its spellings are not the word or an apostrophe is in it. */
export function tokensOf(word: string, built: BuiltWord): GuessToken[] | null {
  const starts = placeSpellings(word, spellingsOf(built));
  if (!starts || built.parts.some(({ role }) => role === 'clitic')) return null;
  let at = 0;
  return built.parts.flatMap(({ role, spellings }, place) =>
    spellings.map(({ letters, sound, spells }, i): GuessToken => {
      const joins = role === 'base' && i === 0 && built.parts[place - 1]?.role === 'base';
      const text = word.slice(starts[at]!, starts[at + 1]!);
      at++;
      const own = role === 'prefix' || role === 'suffix' ? role : joins ? 'joined' : 'base';
      return { role: own, text, letters, sound, ...(spells === undefined ? {} : { spells }) };
    }),
  );
}

/** One string for each token, to tell tokens apart, stress aside. */
export function nameOfToken({ role, text, letters, sound, spells }: GuessToken): string {
  return `${role} ${text} ${letters} ${sound} ${spells ?? ''}`;
}
