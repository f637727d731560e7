import { commonWords } from './common-words.ts';
import { fits } from './fits.ts';
import { phraseAt } from './phrase-at.ts';
import { findSpelling } from './spellings.ts';
import type { Lexeme } from './split-lexemes.ts';

/** Whether a word that is also letters (are, ear, air) joins the words on both sides. */
export function joinsWords(lexemes: readonly Lexeme[], i: number, letters: string): boolean {
  const isProse = (lexeme: Lexeme | undefined) =>
    lexeme?.kind === 'word' &&
    lexeme.mark === 'none' &&
    findSpelling(lexeme.text, 'none') === null &&
    !/^(?:and|as|is|says?|like|the|letters?|sounds?|spell(?:ing|ed|s|t)?|words?)$/.test(lexeme.text) &&
    !fits(lexeme.text, letters);
  const before = lexemes[i - 1];
  if (letters === 'all' && isWordAll(lexemes, i)) return true;
  // A verb or "our" needs prose on one side only: "ir and ur are added".
  if (
    /^(?:are|our|all)$/.test(letters) &&
    isProse(lexemes[i + 1]) &&
    (before !== undefined || isProse(lexemes[i + 2]))
  )
    return true;
  if (letters === 'are' && before?.kind === 'word' && (isProse(before) || before.text.endsWith('s')))
    return true;
  return (isProse(before) || /^words?$/.test(before?.text ?? '')) && isProse(lexemes[i + 1]);
}

/** Whether all is the word and not the letters of ball: "all the letters", "that is all", "all blends". */
function isWordAll(lexemes: readonly Lexeme[], i: number): boolean {
  const next = lexemes[i + 1];
  if (/^(?:the|of|our|these|this|that|those|five|four|three|two)$/.test(next?.text ?? '')) return true;
  if (next?.kind === 'word' && next.mark === 'none' && phraseAt(lexemes, i + 1)[0] !== null) return true;
  return lexemes[i - 1]?.text === 'is' && /^(?:that|this|it)$/.test(lexemes[i - 2]?.text ?? '');
}

/** Whether `or` joins two letters of a list with commas: "er, ir or ur". */
function joinsLetters(lexemes: readonly Lexeme[], i: number): boolean {
  const [before, after] = [lexemes[i - 1], lexemes[i + 1]];
  const listed = lexemes[i - 2]?.text === ',' && lexemes[i - 3]?.kind === 'word';
  return before?.kind === 'word' && after?.kind === 'word' && listed;
}

/** Whether `or` means the letters of fork. They are in a list of letters, or alone between signs. */
export function standsForLetters(lexemes: readonly Lexeme[], i: number): boolean {
  const before = lexemes[i - 1];
  const after = lexemes[i + 1];
  if (joinsLetters(lexemes, i)) return false;
  const withR = (lexeme: Lexeme) =>
    /r(?:_e|e)?$/.test(lexeme.text) && findSpelling(lexeme.text, lexeme.mark) !== null;
  const leads =
    before === undefined ||
    /^(?:break|is|open|hint|list)$/.test(before.kind) ||
    (before.kind === 'word' &&
      (withR(before) ||
        /^(?:and|as|is|says?|like|letters?|spell(?:ing|ed|s|t)?|with|grapheme|controlled|the|vowels?)$/.test(
          before.text,
        ))) ||
    (before.kind === 'sound' && after?.kind !== 'sound');
  const goesOn =
    after === undefined ||
    /^(?:break|is|open|close|hint|every|note)$/.test(after.kind) ||
    (after.kind === 'sound' && before?.kind !== 'close') ||
    (after.kind === 'word' &&
      (withR(after) ||
        /^(?:as|says?|and|like|in|after|before|makes?|words?|for|first|next|then|only|now|too|together|last)$/.test(
          after.text,
        )));
  return leads && goesOn;
}

/** Whether letters may be a word of prose or a single letter: `or`, `a`. `ck` and `igh` can only be letters. */
export function isWord(letters: string): boolean {
  return letters.length === 1 || commonWords.has(letters) || wordsOfLetters.has(letters);
}

/** Spellings of the catalogue that are also words. */
const wordsOfLetters = new Set(
  'or ear air all old our oar ore am an as at in on is it us be he me we up so no do go ill age eye war ate ink de en et la ire'.split(
    ' ',
  ),
);
