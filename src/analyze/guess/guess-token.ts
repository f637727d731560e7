import { type BuiltWord, spellingsOf } from '../build/built-word.ts';
import { placeSpellings } from '../build/place-spellings.ts';

/** The part a token belongs to: a base, a base joined to the base before it (the c of pancake), or an affix. */
export type TokenRole = 'base' | 'joined' | 'prefix' | 'suffix';

/**
 * One step through the letters of a word. Unlike a spelling, a token tells which letters it covers, so the texts of all
 * tokens together give the word: the p of hope covers `pe`.
 */
export interface GuessToken {
  readonly role: TokenRole;
  /** The letters of the word that this token covers, including the silent e that closes a split vowel. */
  readonly text: string;
  readonly letters: string;
  readonly sound: string;
  /** The same field as in build/built-word.ts: the o of hoping spells `o_e`. */
  readonly spells?: string;
  /** Set if the token has the main stress of the word. Only tokens of the model have this field. */
  readonly stressed?: boolean;
}

/**
 * Returns the tokens of a built word in order. Returns null if the spellings do not make up the word or it contains an
 * apostrophe.
 */
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

/** Returns a string that identifies a token, without its stress. */
export function nameOfToken({ role, text, letters, sound, spells }: GuessToken): string {
  return `${role} ${text} ${letters} ${sound} ${spells ?? ''}`;
}
