import { beginsPhrase, findPhrase, LONGEST_PHRASE, type Phrase } from './phrases.ts';
import type { Lexeme } from './split-lexemes.ts';

/** Returns the longest phrase that begins at `i` and the number of lexemes it takes. */
export function phraseAt(lexemes: readonly Lexeme[], i: number): readonly [Phrase | null, number] {
  if (!beginsPhrase(lexemes[i]!.text)) return [null, 0];
  const words: { text: string; end: number }[] = [];
  for (let at = i; at < lexemes.length && words.length < LONGEST_PHRASE; at++) {
    const { kind, text } = lexemes[at]!;
    // Signs inside a phrase are skipped: "consonant + le", "VC/CV", "soft c & g".
    if (kind === 'break' && text !== '' && '+/&'.includes(text)) continue;
    if (kind !== 'word') break;
    words.push({ text, end: at + 1 });
  }
  for (; words.length > 0; words.pop()) {
    const phrase = findPhrase(words.map(({ text }) => text));
    if (phrase !== null) return [phrase, words.at(-1)!.end - i];
  }
  return [null, 0];
}
