import type { PatternId } from '../types.ts';
import { findSpelling } from './spellings.ts';
import type { Lexeme } from './split-lexemes.ts';

const meanings: Readonly<Record<string, PatternId>> = {
  'c before e': 'soft-c',
  'c before i': 'soft-c',
  'g before e': 'soft-g',
  'g before i': 'soft-g',
  'a before l': 'a-before-l',
  'al before l': 'a-before-l',
  'n before k': 'n-ng',
  'i before nd': 'i-long-closed',
  'i before ld': 'i-long-closed',
  'o before ld': 'o-long-closed',
  'o before lt': 'o-long-closed',
  'o before st': 'o-long-closed',
  'o before ll': 'o-long-closed',
  'a after w': 'a-after-w',
  'a after q': 'a-after-w',
  'or after w': 'or-er',
  'ar after w': 'ar-or',
};

/**
 * Reads a condition such as "before e, i, y" or "after w and qu" that begins at lexeme `i`. Returns its end, so that
 * its letters do not become items of their own. Also returns the pattern that `letters` have there: c before e is soft.
 * The pattern is null if there is no particular one.
 */
export function readCondition(
  lexemes: readonly Lexeme[],
  i: number,
  letters: string,
): { readonly end: number; readonly meant: PatternId | null } {
  let end = i + 1;
  let meant: PatternId | null = null;
  for (let next = i + 1; next < lexemes.length; next++) {
    const { kind, text } = lexemes[next]!;
    // In "c before e, g before e" the next letters have a condition of their own.
    const after = lexemes[next + 1];
    if (kind === 'word' && after?.kind === 'word' && /^(?:before|after)$/.test(after.text)) break;
    if (kind === 'word' && (/^(?:[a-z]|ll|qu)$/.test(text) || lists(text))) {
      const place = `${letters} ${lexemes[i]!.text}`;
      meant ??= meanings[`${place} ${text}`] ?? meanings[`${place} ${text[0]}`] ?? null;
      end = next + 1;
    } else if (kind !== 'break' && !(kind === 'word' && (text === 'and' || text === 'or'))) break;
  }
  return { end, meant };
}

/** Whether a text is letters as in "-es after sh, ch, x". Such letters are not items of their own. */
function lists(text: string): boolean {
  return text.length <= 3 && findSpelling(text, 'none') !== null;
}
