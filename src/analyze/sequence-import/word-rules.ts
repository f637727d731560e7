import type { Spelled } from './clause-chunk.ts';
import type { ClauseReader } from './clause-reader.ts';
import { fits } from './fits.ts';
import { findPhrase, type Phrase } from './phrases.ts';
import { readCondition } from './read-condition.ts';
import { soundsByName } from './sound-names.ts';
import { soundPhrase } from './sound-phrase.ts';
import type { Spelling } from './spellings.ts';
import type { Lexeme } from './split-lexemes.ts';
import { fillerWords, hintWords, looseWords, restWords } from './word-roles.ts';

/** A word of a clause with what it may be: the longest phrase that begins there, letters, or only a word. */
interface WordAt {
  readonly i: number;
  readonly lexeme: Lexeme;
  readonly phrase: Phrase | null;
  /** Lexemes of the phrase. */
  readonly length: number;
  readonly spelling: Spelling | null;
}

/** What a word of a clause can be. */
export interface WordRule {
  readonly name: string;
  /** A clause with a word it applies to, and one much like it without. */
  readonly example: string;
  readonly counterExample: string;
  /** Does what the word means, and gives how many lexemes that took; 0 where the rule does not apply. */
  readonly applies: (reader: ClauseReader, word: WordAt) => number;
}

/** In order: the first rule that applies to a word is taken. */
export const wordRules: readonly WordRule[] = [
  {
    name: 'a phrase of the trade',
    example: 'vowel teams',
    counterExample: 'teamwork',
    applies: (reader, { phrase, length, lexeme }) => {
      const stands = reader.aside || reader.hinting || length > 1 || lexeme.mark === 'none';
      if (phrase === null || !stands) return 0;
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
      // "soft c before e, i, y" says of a phrase where it is so.
      if (last === undefined && (reader.broken || chunk === null || chunk.known === 0)) return 0;
      const { end, meant } = readCondition(reader.lexemes, i, last?.spelling.letters ?? '');
      if (meant !== null)
        last!.sounds.push({ ids: [meant], sure: true, within: new Set([meant]), keeps: [] });
      reader.touch();
      return end - i;
    },
  },
  {
    name: 'a list of a heading after "such as"',
    example: 'digraphs such as sh',
    counterExample: 'sh such as ship',
    applies: (reader, { spelling, lexeme }) => {
      const { scope, chunk, last } = reader;
      const listed = reader.hinting && last === undefined && scope !== null && scope.chunk === chunk;
      if (!listed || spelling?.candidates.some((id) => scope.heading.within!.has(id)) !== true) return 0;
      reader.hinting = false;
      reader.readSpelling(spelling, lexeme);
      return 1;
    },
  },
  {
    name: 'a sound after says',
    example: 'ea says ee',
    counterExample: 'ea as in each',
    applies: (reader, { lexeme: { text } }) => {
      const { last, hinting } = reader;
      const sound = text.length <= 2 && hinting ? soundsByName.get(text) : undefined;
      if (sound === undefined || last === undefined || last.examples.length > 0) return 0;
      last.sounds.push(soundPhrase(text));
      return 1;
    },
  },
  {
    name: 'long or short, of letters',
    example: 'oo (long)',
    counterExample: 'oo (longer)',
    applies: ({ last, aside, hinting }, { lexeme: { text } }) => {
      const beside = (aside || hinting) && last !== undefined && /^(?:long|short)$/.test(text);
      const sized = beside ? findPhrase([text, last.spelling.letters]) : null;
      if (sized === null) return 0;
      last!.sounds.push(sized);
      return 1;
    },
  },
  {
    name: 'letters after examples',
    example: 'ai as in rain oa',
    counterExample: 'ai as in rain sail',
    applies: (reader, { lexeme, spelling }) => {
      const { last, aside, hinting } = reader;
      if (aside || !hinting || spelling === null) return 0;
      // After letters they need an example first, after a phrase none: "longer words: er, or".
      const starts =
        last === undefined
          ? lexeme.text.length > 1 || lexeme.mark !== 'none'
          : last.examples.length > 0 && !fits(lexeme.text, last.spelling.letters);
      if (!starts) return 0;
      reader.readSpelling(spelling, lexeme);
      return 1;
    },
  },
  {
    name: 'an example',
    example: 'ai (rain)',
    counterExample: 'ai rain',
    applies: (reader, { lexeme: { text } }) => {
      const { last, aside, hinting } = reader;
      if (!aside && !hinting) return 0;
      if (/^(?:the|and|or|sounds?|words?)$/.test(text)) return 1;
      // "er, or, ar (helper, doctor, dollar)": each is an example of its own letters.
      const shown = [last, ...reader.lastSpelled(6)].find(
        (one) => one !== undefined && fits(text, one.spelling.letters),
      );
      (shown ?? last)?.examples.push(text);
      return 1;
    },
  },
  {
    name: 'the article a',
    example: 'words with a silent letter',
    counterExample: 'a as in hat',
    applies: (reader, { i, lexeme }) => {
      const next = reader.lexemes[i + 1];
      if (lexeme.text !== 'a' || lexeme.mark !== 'none' || next?.kind !== 'word' || next.mark !== 'none')
        return 0;
      if (!/^[^aeiou\d].{2}/.test(next.text) || fillerOrHint.test(next.text) || next.text.includes('_'))
        return 0;
      // "a cat, e net": a letter and its key word.
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
      // What they are exceptions to is not what is taught.
      reader.doubt();
      reader.openOr(lexeme).unknown += 2;
      return 1;
    },
  },
  {
    name: 'another example',
    example: 'ai as in rain, sail',
    counterExample: 'ai as in rain, ay',
    applies: (reader, { i, lexeme, spelling, phrase }) => {
      const { chunk, trailing, lexemes } = reader;
      if (!trailing || chunk === null || phrase !== null || lexeme.mark !== 'none') return 0;
      if (lexeme.text.length < 2 || restWords.has(lexeme.text)) return 0;
      const after = lexemes[i + 1];
      const alone = after?.kind !== 'word' || after.text === 'and' || after.text === 'or';
      const shown = reader.lastSpelled(4).find((one) => fits(lexeme.text, one.spelling.letters));
      if (shown === undefined && (chunk.spelled.length > 0 || spelling !== null || !alone)) return 0;
      // "wa as in wash, war as in warm": short and known as letters, war is no example of wa.
      if (shown !== undefined && spelling !== null && lexeme.text.length <= 3) return 0;
      if (lexeme.text === 'and' || lexeme.text === 'or') return 0;
      shown?.examples.push(lexeme.text);
      return 1;
    },
  },
  {
    name: 'a word that divides',
    example: 'ai or ay',
    counterExample: 'ar or ir',
    applies: (reader, word) => {
      const { text } = word.lexeme;
      if (!(text === 'and' && !inProse(reader)) && !(text === 'or' && divides(reader, word.i))) return 0;
      reader.divide(text === 'and');
      return 1;
    },
  },
  {
    name: 'letters',
    example: 'ai',
    counterExample: 'harbour',
    applies: (reader, { spelling, lexeme }) => {
      const plain = lexeme.mark === 'none' && !lexeme.text.includes('_');
      if (spelling === null || (inProse(reader) && plain)) return 0;
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
      if (last === undefined || !showsLetters(reader, text, last)) return 0;
      last.examples.push(text);
      return 1;
    },
  },
  {
    name: 'a word that shows a heading',
    example: 'short a: at, am',
    counterExample: 'short a: pin',
    applies: (reader, { lexeme: { text } }) => {
      if (!reader.isNote(text)) return 0;
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
      if (!hintWords.has(text)) return 0;
      // "ie in pie and in chief"
      if (reader.broken && !(reader.trailing && reader.last !== undefined)) return 0;
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
      reader.openOr(lexeme).unknown += 1;
      return 1;
    },
  },
];

/** Words after a letter that say something of it, so that the letter a before them is no article. */
const fillerOrHint =
  /^(?:says?|said|saying|makes?|making|like|such|sounds?|spelled|spelt|spellings?|then|before|plus|with|from|short|long|the)$/;

/** After a word that nothing is known of, until something divides. */
function inProse({ chunk, broken }: ClauseReader): boolean {
  return chunk !== null && !broken && chunk.known === 0;
}

/** Beyond a comma one letter is too little to say that a word shows it: `t, the`. */
function showsLetters({ broken }: ClauseReader, text: string, { spelling }: Spelled): boolean {
  return text.length > 1 && fits(text, spelling.letters) && (!broken || spelling.letters.length > 1);
}

/** `ai or ay`, `/d/ or /t/`; but in `ar or ir` and `ar, or` it is letters. */
function divides({ lexemes, scope }: ClauseReader, i: number): boolean {
  const before = lexemes[i - 1];
  const after = lexemes[i + 1];
  if (before?.kind === 'sound' && after?.kind === 'sound') return true;
  if (before?.kind !== 'word' || after?.kind !== 'word') return false;
  if (before.text.endsWith('r') || after.text.endsWith('r')) return false;
  return scope?.heading.within?.has('or') !== true;
}
