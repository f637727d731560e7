import type { Chunk } from './clause-chunk.ts';
import type { Phrase } from './phrases.ts';
import { findSpelling } from './spellings.ts';
import type { Lexeme } from './split-lexemes.ts';

/**
 * Settles the text before a colon that only letters follow. The letters are taught, and the text before the colon only
 * names them: "l-family blends: bl, cl". A single sure pattern (short a: m, s) is taught in addition, and so are longer
 * letters.
 */
export function settleAnnouncement(lexemes: readonly Lexeme[], chunks: readonly Chunk[]): void {
  announceSounds(lexemes, chunks);
  announceLetters(chunks);
  const colon = lexemes.findIndex(({ kind, text }) => kind === 'is' && text === ':');
  if (colon > 0) announceKinds(chunks, lexemes[colon]!.start);
  if (colon < 1 || !listsLetters(lexemes.slice(colon + 1))) return;
  const end = lexemes[colon]!.start;
  const lastWord = lexemes.slice(0, colon).findLast(({ kind }) => kind === 'word')?.start ?? 0;
  // The letter in a description is part of each letter group in the list: "a digraph plus r: shr, thr".
  const listed = lexemes.slice(colon + 1).filter(({ kind, text }) => kind === 'word' && text !== 'and');
  const within = (letter: string) => listed.every(({ text }) => text.length > 1 && text.includes(letter));
  for (const chunk of chunks) {
    if (chunk.start > end) break;
    const described =
      colon > 2 &&
      chunk.phrases.length === 0 &&
      chunk.spelled.length > 0 &&
      chunk.spelled.every(
        ({ spelling, start }) => start < end && spelling.letters.length === 1 && within(spelling.letters),
      );
    const strayLetters =
      described ||
      (chunk.phrases.length === 0 &&
        chunk.spelled.every(({ spelling, start }) => spelling.letters.length === 1 && start < end) &&
        lastWord > chunk.start);
    const open = chunk.phrases.length > 0 && chunk.spelled.length === 0 && chunk.phrases.every(isOpen);
    if (strayLetters) chunk.spelled.length = 0;
    if (strayLetters || open) chunk.announces = true;
  }
}

/** Selects the kinds that are named after the colon: "spelling changes: double the consonant, drop the e". */
function announceKinds(chunks: readonly Chunk[], colon: number): void {
  const named = chunks.filter(({ start, phrases }) => start > colon && phrases.length > 0);
  const listed = new Set(named.flatMap(({ phrases }) => phrases.flatMap(({ ids }) => ids)));
  if (listed.size === 0) return;
  for (const chunk of chunks) {
    const ids = chunk.phrases.flatMap((phrase) => phrase.ids);
    if (
      chunk.start < colon &&
      chunk.spelled.length === 0 &&
      chunk.phrases.length === 1 &&
      ids.length > 1 &&
      [...listed].every((id) => ids.includes(id))
    )
      chunk.announces = true;
  }
}

/**
 * Selects the letters after a heading that leaves its letters open: "long a two ways, ai in the middle and ay at the
 * end".
 */
function announceLetters(chunks: readonly Chunk[]): void {
  const [first, ...others] = chunks;
  if (first === undefined || others.length < 2 || first.phrases.length !== 1 || first.spelled.length > 0)
    return;
  const [{ within, sure, sound }] = first.phrases as [Phrase];
  const fits = ({ phrases, spelled }: Chunk) =>
    phrases.length === 0 &&
    spelled.length > 0 &&
    spelled.every(({ spelling }) => spelling.candidates.some((id) => within?.has(id)));
  if (!sure && sound !== true && within !== null && others.every(fits)) first.announces = true;
}

/**
 * Treats the sounds before "spelt" as sounds of the letters after it, not as letters of their own: "/f/, /l/ and /s/
 * spelt ff, ll, ss".
 */
function announceSounds(lexemes: readonly Lexeme[], chunks: readonly Chunk[]): void {
  const at = lexemes.findIndex(({ kind }) => kind === 'list');
  // In "/sh/ and /ch/ (including tch)" the sounds before the brackets are letters of their own.
  if (at < 0 || lexemes.slice(0, at).some(({ kind }) => kind === 'open')) return;
  const spelt = lexemes[at]!.start;
  const listed = chunks.flatMap(({ spelled }) => spelled).filter(({ start }) => start > spelt);
  if (listed.length === 0) return;
  const sounds = new Set<Phrase>();
  for (const chunk of chunks) {
    const onlySounds = chunk.phrases.length > 0 && chunk.phrases.every(({ sound }) => sound);
    if (chunk.start >= spelt || !onlySounds) continue;
    for (const phrase of chunk.phrases) sounds.add(phrase);
    if (chunk.spelled.length === 0) chunk.announces = true;
  }
  // The letters have each of the sounds: "/oo/ and /ʊ/ spelled oo".
  if (sounds.size < 2) return;
  for (const one of listed) {
    if (!one.headings.some(({ sound }) => sound)) continue;
    one.headings.splice(0, one.headings.length, ...one.headings.filter(({ sound }) => !sound));
    one.sounds.push(...sounds);
  }
}

/**
 * Whether a heading only announces the list after it. A heading with one sure pattern, or a kind of syllable, is taught
 * as well.
 */
export function isOpen({ within, sure, ids, keeps }: Phrase): boolean {
  return within !== null && keeps.length === 0 && !(sure && ids.length === 1);
}

function listsLetters(lexemes: readonly Lexeme[]): boolean {
  const words = lexemes.filter(({ kind, text }) => kind === 'word' && text !== 'and' && text !== 'or');
  const others = lexemes.some(({ kind }) => kind !== 'word' && kind !== 'break');
  return words.length > 1 && !others && words.every(({ text, mark }) => findSpelling(text, mark) !== null);
}
