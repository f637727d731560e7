import type { Chunk } from './clause-chunk.ts';
import type { Phrase } from './phrases.ts';
import { findSpelling } from './spellings.ts';
import type { Lexeme } from './split-lexemes.ts';

/**
 * Where nothing but letters follows a colon, they are what is taught: what stands before it only names them, as in
 * "l-family blends: bl, cl". One thing for sure (short a: m, s) is taught besides, and so are longer letters.
 */
export function settleAnnouncement(lexemes: readonly Lexeme[], chunks: readonly Chunk[]): void {
  announceSounds(lexemes, chunks);
  const colon = lexemes.findIndex(({ kind, text }) => kind === 'is' && text === ':');
  if (colon < 1 || !listsLetters(lexemes.slice(colon + 1))) return;
  const end = lexemes[colon]!.start;
  const lastWord = lexemes.slice(0, colon).findLast(({ kind }) => kind === 'word')?.start ?? 0;
  for (const chunk of chunks) {
    if (chunk.start > end) break;
    const strayLetters =
      chunk.phrases.length === 0 &&
      chunk.spelled.every(({ spelling, start }) => spelling.letters.length === 1 && start < end) &&
      lastWord > chunk.start;
    const open = chunk.phrases.length > 0 && chunk.spelled.length === 0 && chunk.phrases.every(isOpen);
    if (strayLetters) chunk.spelled.length = 0;
    if (strayLetters || open) chunk.announces = true;
  }
}

/** "/f/, /l/ and /s/ spelt ff, ll, ss": the sounds before "spelt" are no letters of their own. */
function announceSounds(lexemes: readonly Lexeme[], chunks: readonly Chunk[]): void {
  const spelt = lexemes.find(({ kind }) => kind === 'list')?.start;
  if (spelt === undefined || !chunks.some((chunk) => chunk.spelled.some(({ start }) => start > spelt)))
    return;
  for (const chunk of chunks) {
    const sounds = chunk.phrases.length > 0 && chunk.phrases.every(({ sound }) => sound);
    if (chunk.start < spelt && sounds && chunk.spelled.length === 0) chunk.announces = true;
  }
}

/** Whether a heading only announces the list after it; one sure pattern, or a kind of syllable, is taught besides. */
export function isOpen({ within, sure, ids, keeps }: Phrase): boolean {
  return within !== null && keeps.length === 0 && !(sure && ids.length === 1);
}

function listsLetters(lexemes: readonly Lexeme[]): boolean {
  const words = lexemes.filter(({ kind, text }) => kind === 'word' && text !== 'and' && text !== 'or');
  const others = lexemes.some(({ kind }) => kind !== 'word' && kind !== 'break');
  return words.length > 1 && !others && words.every(({ text, mark }) => findSpelling(text, mark) !== null);
}
