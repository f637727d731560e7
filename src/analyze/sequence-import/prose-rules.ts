import type { WordRule } from './example-rules.ts';
import type { Lexeme } from './split-lexemes.ts';
import { hedgeWords } from './word-roles.ts';
import { isWord, standsForLetters } from './words-or-letters.ts';

/**
 * Rules for words that join other words into sentences, and for remarks beside the content taught. The first rule that
 * applies is used.
 */
export const proseRules: readonly WordRule[] = [
  {
    name: 'what is so before something is done',
    example: 'if that makes no word, divide after the consonant',
    counterExample: 'if that makes no word',
    applies: (reader, { i, lexeme: { text, mark } }) => {
      if (i > 0 || mark !== 'none' || !/^(?:if|when|whenever|once|because|since|although|where)$/.test(text))
        return 0;
      const end = endOfRun(reader.lexemes, 1);
      const comma = reader.lexemes[end]?.text === ',' && end > 2 && end + 1 < reader.lexemes.length;
      if (!comma) return 0;
      reader.wait(reader.lexemes[0]!);
      return end;
    },
  },
  {
    name: 'when something is done',
    example: 'double the consonant when one vowel stands before it',
    counterExample: 'when',
    applies: (reader, { i, lexeme: { text, mark } }) => {
      const { chunk, lexemes } = reader;
      if (!/^(?:when|if|whenever|because|since|although|unless|while|where)$/.test(text)) return 0;
      if (mark !== 'none' || chunk === null || chunk.known === 0 || reader.aside || reader.hinting) return 0;
      // "plurals where f changes to v" says what is taught.
      if (
        lexemes
          .slice(i + 1, endOfRun(lexemes, i + 1))
          .some(({ ids }) => ids?.some((id) => id.startsWith('change-')))
      )
        return 0;
      // "wh when": an example.
      const end = endOfRun(lexemes, i + 1);
      if (reader.broken || end === i + 1) return 0;
      return end - i;
    },
  },
  {
    name: 'what is said of letters after a comma',
    example: 'kn and wr, in which the first letter is silent',
    counterExample: 'which letters',
    applies: (reader, { i, lexeme: { text } }) => {
      const { chunk, lexemes } = reader;
      const at = text === 'in' ? i + 1 : i;
      if (lexemes[at]?.text !== 'which' || chunk === null || chunk.known === 0 || reader.hinting) return 0;
      const end = endOfRun(lexemes, at + 1);
      if (end === at + 1) return 0;
      reader.touch();
      return end - i;
    },
  },
  {
    name: 'what is not taught',
    example: 'digraphs except ph',
    counterExample: 'short o: no, not',
    applies: (reader, { i, lexeme: { text, mark } }) => {
      const { chunk, lexemes } = reader;
      if (!/^(?:not|no|never|except|excluding|without|omit|unlike|nor|keep|keeping)$/.test(text)) return 0;
      const end = endOfRun(lexemes, i + 1);
      if (mark !== 'none' || reader.hinting || end === i + 1) return 0;
      // An exception may follow examples: "ow as in snow, not cow".
      const shown = reader.trailing || chunk?.spelled.length !== 0;
      if (
        chunk !== null &&
        chunk.known > 0 &&
        (!reader.broken || (shown && /^(?:not|no|never)$/.test(text)))
      ) {
        // Brackets such as "(not ei)" are clear enough.
        if (!reader.aside) chunk.hedged = true;
        return end - i;
      }
      if (reader.aside) return 0;
      reader.negated = true;
      reader.wait(lexemes[i]!);
      return 1;
    },
  },
  {
    name: 'what an ending is added to',
    example: '-es to verbs ending in -y',
    counterExample: '-es to -y',
    applies: (reader, { i, lexeme: { text } }) => {
      const { last, broken, lexemes } = reader;
      const next = lexemes[i + 1];
      const affix = last?.spelling.candidates.some((id) => /^(?:suf|pre)fix-/.test(id)) === true;
      if (!/^(?:to|on|onto|for|after|in)$/.test(text) || broken || !affix) return 0;
      if (next?.kind !== 'word' && next?.kind !== 'note') return 0;
      if (next.mark !== 'none' || next.text.length < 3) return 0;
      const end = endOfRun(lexemes, i + 1);
      const listed = endOfConditions(lexemes, i + 1, end);
      if (listed > 0) return listed - i;
      if (/^(?:for|after|in)$/.test(text)) return 0;
      // "and" may introduce more letters: "-s to base words and -es", "and the ending -tion".
      const anew = lexemes.findIndex(
        ({ text, kind }, at) =>
          at > i && at < end && kind === 'word' && text === 'and' && beginsAnew(lexemes, at + 1),
      );
      return (anew < 0 ? end : anew) - i;
    },
  },
  {
    name: 'whose possessive',
    example: 'apostrophe s with plural words',
    counterExample: 'plural words',
    applies: ({ chunk, broken }, { lexeme: { text }, length }) => {
      const possessive = chunk?.phrases.some(({ ids }) => ids.includes('possessive')) === true;
      if (broken || !possessive || !/^(?:plurals?|singular)$/.test(text)) return 0;
      return Math.max(1, length);
    },
  },
  {
    name: 'a word that leaves open how things go together',
    example: 'ai through oa',
    counterExample: 'ai and oa',
    applies: (reader, { lexeme }) => {
      const { text, mark } = lexeme;
      if (mark !== 'none' || !hedgeWords.has(text) || reader.aside || reader.hinting) return 0;
      reader.hedging = true;
      if (reader.chunk !== null && !reader.broken) reader.chunk.hedged = true;
      reader.wait(lexeme);
      return 1;
    },
  },
  {
    name: 'or between other words',
    example: 'gn at the start or end',
    counterExample: 'ar, or',
    applies: (reader, { i, lexeme: { text, mark } }) => {
      if (text !== 'or' || mark !== 'none' || standsForLetters(reader.lexemes, i)) return 0;
      // In "a lighthouse or our harbour" there is prose on both sides.
      if (reader.chunk !== null && !reader.broken && reader.chunk.known === 0) return 0;
      reader.divide(true);
      return 1;
    },
  },
];

/**
 * Returns the end of letters that only say which words are meant: "words ending in s, x, z, ch, or sh". Returns 0 if
 * there are no such letters.
 */
function endOfConditions(lexemes: readonly Lexeme[], from: number, to: number): number {
  let at = from;
  while (at < to && !/^(?:end|ends|ending|finish|finishing)$/.test(lexemes[at]!.text)) at += 1;
  if (!/^(?:in|with)$/.test(lexemes[at + 1]?.text ?? '')) return 0;
  let end = 0;
  for (at += 2; at < lexemes.length; at++) {
    const { kind, text } = lexemes[at]!;
    if (kind === 'sound' || (kind === 'word' && /^(?:[b-df-hj-np-tv-xz]{1,3}|y|ce|ge)$/.test(text)))
      end = at + 1;
    else if (kind !== 'break' && !/^(?:and|or|a|an|the|letters?|consonants?)$/.test(text)) break;
  }
  return end;
}

/** Returns the end of the run of words, letters and sounds from `i` on. */
function endOfRun(lexemes: readonly Lexeme[], i: number): number {
  let end = i;
  while (end < lexemes.length && /^(?:word|sound|note|meant)$/.test(lexemes[end]!.kind)) end += 1;
  return end;
}

/**
 * Whether there are letters or an ending at a place, rather than one more kind of words: "and -es", "and the ending
 * -tion", "and l as in".
 */
function beginsAnew(lexemes: readonly Lexeme[], at: number): boolean {
  const next = lexemes[at]?.text === 'the' ? lexemes[at + 1] : lexemes[at];
  if (next === undefined || next.mark !== 'none') return true;
  const letters = /^[b-z]$/.test(next.text) || (next.text.length < 4 && !isWord(next.text));
  if (next.text === 'words' && lexemes[at + 1]?.text === 'with') return true;
  return /^(?:endings?|suffix|prefix|spelling|letters?|sounds?)$/.test(next.text) || letters;
}
