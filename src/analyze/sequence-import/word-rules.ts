import type { Spelled } from './clause-chunk.ts';
import type { ClauseReader } from './clause-reader.ts';
import { exampleRules, type WordRule } from './example-rules.ts';
import { fits } from './fits.ts';
import { proseRules } from './prose-rules.ts';
import { readCondition } from './read-condition.ts';
import { fillerWords, hintWords, looseWords, restWords } from './word-roles.ts';
import { isWord, joinsWords } from './words-or-letters.ts';

/** The rules in order. The first rule that applies to a word is used. */
export const wordRules: readonly WordRule[] = [
  ...proseRules.filter(({ name }) => name === 'whose possessive'),
  {
    name: 'a phrase of the trade',
    example: 'vowel teams',
    counterExample: 'teamwork',
    applies: (reader, { phrase, length, lexeme }) => {
      const stands = reader.aside || reader.hinting || length > 1 || lexeme.mark === 'none';
      if (phrase === null || !stands) return 0;
      if (length === 1 && isNoPhrase(reader, lexeme.text)) return 0;
      reader.readHeading(phrase, lexeme, length, false);
      return length;
    },
  },
  {
    name: 'where letters stand',
    example: 'c before e, i, y',
    counterExample: 'before e',
    applies: (reader, { i, lexeme: { text } }) => {
      const { last, chunk } = reader;
      if (text !== 'before' && text !== 'after') return 0;
      // The condition names words rather than letters: "-es after words that end in s".
      if (/^(?:words?|nouns?|verbs?|bases?)$/.test(reader.lexemes[i + 1]?.text ?? '')) return 0;
      // "soft c before e, i, y" adds a condition to a phrase.
      if (last === undefined && (reader.broken || chunk === null || chunk.known === 0)) return 0;
      const { end, meant } = readCondition(reader.lexemes, i, last?.spelling.letters ?? '');
      if (meant !== null)
        last!.sounds.push({ ids: [meant], sure: true, within: new Set([meant]), keeps: [] });
      // In "o before ss" nobody knows the sound of the vowel.
      else if (end > i + 1 && /^[aeiouy]$/.test(last?.spelling.letters ?? '')) chunk!.hedged = true;
      reader.touch();
      return end - i;
    },
  },
  ...exampleRules,
  ...proseRules.filter(({ name }) => name !== 'whose possessive'),
  {
    name: 'the article a',
    example: 'words with a silent letter',
    counterExample: 'a as in hat',
    applies: (reader, { i, lexeme }) => {
      const next = reader.lexemes[i + 1];
      const before = reader.lexemes[i - 1]?.text ?? '';
      // The a in "ending in a v sound" is an article.
      if (
        lexeme.text === 'a' &&
        lexeme.mark === 'none' &&
        next?.kind === 'sound' &&
        BEFORE_ARTICLE.test(before)
      ) {
        reader.wait(lexeme);
        return 1;
      }
      if (lexeme.text !== 'a' || lexeme.mark !== 'none' || next?.kind !== 'word' || next.mark !== 'none')
        return 0;
      if (!/^[^aeiou\d].{2}/.test(next.text) || fillerOrHint.test(next.text) || next.text.includes('_'))
        return 0;
      // "a cat, e net" has letters with their key words.
      if (reader.broken && reader.pendingIsEmpty && fits(next.text, 'a')) return 0;
      reader.wait(lexeme);
      return 1;
    },
  },
  {
    name: 'an exception',
    example: 'exceptions to the rule',
    counterExample: 'closed syllable exceptions',
    applies: (reader, { lexeme }) => {
      if (!/^(?:exceptions?|irregulars?|oddities)$/.test(lexeme.text)) return 0;
      // The text lists exceptions to a pattern, so the pattern itself is not taught.
      reader.doubt();
      const chunk = reader.openOr(lexeme);
      chunk.unknown += 2;
      chunk.asks = true;
      return 1;
    },
  },
  {
    name: 'a word that divides',
    example: 'ai and ay',
    counterExample: 'ai, ay',
    applies: (reader, { lexeme: { text } }) => {
      if (text !== 'and' || inProse(reader)) return 0;
      reader.divide(true);
      return 1;
    },
  },
  {
    name: 'letters',
    example: 'ai',
    counterExample: 'harbour',
    applies: (reader, { i, spelling, lexeme }) => {
      const plain = lexeme.mark === 'none' && !lexeme.text.includes('_');
      if (spelling === null || (inProse(reader) && plain && isWord(lexeme.text))) return 0;
      if (
        plain &&
        lexeme.text.length > 1 &&
        isWord(lexeme.text) &&
        joinsWords(reader.lexemes, i, lexeme.text)
      )
        return 0;
      // The words are examples of the heading: "soft g: age, huge".
      const { scope } = reader;
      const example =
        plain &&
        lexeme.text.length > 1 &&
        isWord(lexeme.text) &&
        scope?.strong === true &&
        scope.heading.sure &&
        scope.heading.ids.length === 1 &&
        !spelling.candidates.some((id) => scope.heading.within!.has(id)) &&
        reader.isNote(lexeme.text);
      if (example) return 0;
      reader.readSpelling(spelling, lexeme);
      return 1;
    },
  },
  {
    name: 'a word that shows the letters before it',
    example: 'ai rain',
    counterExample: 'ai boat',
    applies: (reader, { lexeme: { text } }) => {
      const { last } = reader;
      if (last === undefined || !showsLetters(reader, text, last) || leadsOn(reader, text)) return 0;
      // In "i in hi" the word after "in" is the example.
      const next = reader.lexemes[reader.at + 1];
      const joins = /^(?:in|is|as)$/.test(text) && next?.kind === 'word' && next.mark === 'none';
      if (joins && fits(next.text, last.spelling.letters)) return 0;
      last.examples.push(text);
      return 1;
    },
  },
  {
    name: 'a word that shows a heading',
    example: 'short a: at, am',
    counterExample: 'short a: pin',
    applies: (reader, { lexeme: { text } }) => {
      if (!reader.isNote(text) || leadsOn(reader, text)) return 0;
      reader.chunk!.examples.push(text);
      reader.touch();
      return 1;
    },
  },
  {
    name: 'no new teaching',
    example: 'review',
    counterExample: 'harbour walk with a test',
    applies: (reader, { lexeme }) => {
      if (!restWords.has(lexeme.text) || inProse(reader)) return 0;
      reader.openOr(lexeme).rest = true;
      return 1;
    },
  },
  {
    name: 'a word before an example',
    example: 'ai as rain',
    counterExample: 'as rain',
    applies: (reader, { i, lexeme: { text } }) => {
      const { last: letters } = reader;
      const after = reader.lexemes[i + 1]?.text ?? '';
      const shows =
        text === 'of' && letters !== undefined && !reader.broken && fits(after, letters.spelling.letters);
      if (!hintWords.has(text) && !shows) return 0;
      // A further example may follow: "ie in pie and in chief".
      const told =
        /^(?:pronounced|pronouncing|sounded|sounding|heard)$/.test(text) && reader.last !== undefined;
      if (reader.broken && !told && !(reader.trailing && reader.last !== undefined)) return 0;
      if (told) reader.touch();
      const next = reader.lexemes[i + 1];
      const shown = next?.kind === 'word' && next.mark === 'none' && reader.showsHeading(next.text);
      if (reader.last === undefined && !(shown && reader.chunk !== null)) return 0;
      reader.hinting = true;
      return 1;
    },
  },
  {
    name: 'a word that says nothing of its own',
    example: 'the sound of ai',
    counterExample: 'harbour',
    applies: (reader, { lexeme }) => {
      const { text } = lexeme;
      if (!fillerWords.has(text) && !hintWords.has(text) && !/^\p{N}+$/u.test(text)) return 0;
      if (looseWords.has(text) && reader.chunk !== null && !reader.broken) reader.loose = true;
      reader.wait(lexeme);
      return 1;
    },
  },
  {
    name: 'a word nobody knows',
    example: 'harbour',
    counterExample: 'sh',
    applies: (reader, { lexeme }) => {
      const { chunk, prose } = reader;
      // The words continue the chunk before: "naming words and action words".
      if (prose && reader.joined && reader.broken && chunk !== null && chunk.known > 0) {
        chunk.unknown += 1;
        reader.touch();
      } else reader.openOr(lexeme).unknown += 1;
      return 1;
    },
  },
];

/** Whether a technical word is an ordinary word at its place. */
function isNoPhrase({ lexemes, at, aside, hinting, depth, last }: ClauseReader, text: string): boolean {
  const next = lexemes[at + 1];
  // An ordinary word: "the hard pairs".
  if (/^(?:hard|soft)$/.test(text) && next?.kind === 'word')
    if (!/^(?:[cg]|th|sounds?|consonants?|letters?|spellings?|and|or|as|in|like)$/.test(next.text))
      return true;
  // An ordinary word: "for the K-1 team".
  if (text === 'team' && lexemes[at - 1]?.kind === 'note') return true;
  // A word in a list of examples: "V/CV (silent, hotel)".
  if (depth > 0 && text === 'silent' && next?.text === ',') return true;
  // The word is an example of the letters: "ea (team)".
  const letters = last?.spelling.letters ?? '';
  return (aside || hinting) && letters.length > 1 && fits(text, letters);
}

/** Words that may be before a noun with an article. */
const BEFORE_ARTICLE = /^(?:in|with|to|of|before|after|from|by|for)$/;

/** Words after a letter that tell something about it. The letter a before such a word is not an article. */
const fillerOrHint =
  /^(?:says?|said|saying|makes?|making|like|such|sounds?|spelled|spelt|spellings?|then|before|plus|with|from|short|long|the)$/;

/** Whether the current word follows an unknown word without a divider between them. */
function inProse({ chunk, broken }: ClauseReader): boolean {
  return chunk !== null && !broken && chunk.known === 0;
}

/**
 * Whether a word leads to something else: "s says /z/", "/n/ sound: kn". Such a word is no example, whatever letters it
 * has.
 */
function leadsOn({ lexemes, at }: ClauseReader, text: string): boolean {
  const next = lexemes[at + 1];
  if (!/^(?:word|sound|is|open|hint|list|meant)$/.test(next?.kind ?? '')) return false;
  if (/^(?:sounds?|words?|letters?|spell(?:s|ing|ings|ed)?|says?|saying|makes?|making)$/.test(text))
    return true;
  return (
    next!.kind !== 'open' && next!.kind !== 'is' && /^(?:that|with|which|for|as|has|have|having)$/.test(text)
  );
}

/** Whether a word shows letters. After a comma a single letter is not enough evidence: `t, the`. */
function showsLetters({ broken }: ClauseReader, text: string, { spelling }: Spelled): boolean {
  return (
    text.length > 1 &&
    text !== 'together' &&
    /[aeiouy]/.test(text) &&
    fits(text, spelling.letters) &&
    (!broken || spelling.letters.length > 1)
  );
}
