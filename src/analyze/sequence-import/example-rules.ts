import type { Spelled } from './clause-chunk.ts';
import type { ClauseReader } from './clause-reader.ts';
import { fits } from './fits.ts';
import { phraseAt } from './phrase-at.ts';
import { findPhrase, type Phrase } from './phrases.ts';
import { soundsByName } from './sound-names.ts';
import { soundPhrase } from './sound-phrase.ts';
import { findSpelling, rimes, type Spelling } from './spellings.ts';
import type { Lexeme } from './split-lexemes.ts';
import { restWords } from './word-roles.ts';
import { joinsWords, standsForLetters } from './words-or-letters.ts';

/** A word of a clause with its possible meanings: the longest phrase that begins there, letters, or only a word. */
interface WordAt {
  readonly i: number;
  readonly lexeme: Lexeme;
  readonly phrase: Phrase | null;
  /** The number of lexemes in the phrase. */
  readonly length: number;
  readonly spelling: Spelling | null;
}

/** A rule for the meaning of a word in a clause. */
export interface WordRule {
  readonly name: string;
  /** A clause with a word the rule applies to. `counterExample` is a similar clause without such a word. */
  readonly example: string;
  readonly counterExample: string;
  /** Applies the meaning of the word and returns the number of lexemes this took. Returns 0 if the rule does not apply. */
  readonly applies: (reader: ClauseReader, word: WordAt) => number;
}

/** Rules for words that are examples of letters or names of their sounds. The first rule that applies is used. */
export const exampleRules: readonly WordRule[] = [
  {
    name: 'letters for a sound',
    example: 'ph for f',
    counterExample: 'ph for fish',
    applies: (reader, { i, lexeme: { text } }) => {
      const next = reader.lexemes[i + 1];
      if (text !== 'for' || reader.last === undefined || reader.broken || next?.kind !== 'word') return 0;
      const sound = soundsByName.has(next.text) ? soundPhrase(next.text) : null;
      if (!reader.last.spelling.candidates.some((id) => sound?.within?.has(id))) return 0;
      reader.last.sounds.push(sound!);
      return 2;
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
      const sound = text.length <= 2 && text !== 'or' && hinting ? soundsByName.get(text) : undefined;
      if (sound === undefined || last === undefined || last.examples.length > 0) return 0;
      // In "ai says /ā/ and ea" the ea is other letters, not a sound.
      if (last.sounds.length > 0 && !reader.saidAsLetters) return 0;
      last.sounds.push(soundPhrase(text));
      reader.saidAsLetters = true;
      return 1;
    },
  },
  {
    name: 'another sound after says',
    example: 'ed = t, d, id',
    counterExample: 'ed = t, ai',
    applies: (reader, { lexeme: { text, mark } }) => {
      const { last } = reader;
      if (
        mark !== 'none' ||
        text.length > 2 ||
        last === undefined ||
        last.sounds.length === 0 ||
        last.examples.length > 0
      )
        return 0;
      // In "ch = k, f" the f is another letter, unless f is a sound of ch.
      const sound = soundsByName.has(text) ? soundPhrase(text) : null;
      const says = sound !== null && last.spelling.candidates.some((id) => sound.within?.has(id));
      if (!says || last.spelling.letters === text || !reader.saidAsLetters) return 0;
      last.sounds.push(sound!);
      reader.touch();
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
      // The letters may be a word of a sentence: "letter names in our own names".
      if (last === undefined && lexeme.mark === 'none' && joinsWords(reader.lexemes, reader.at, lexeme.text))
        return 0;
      if (lexeme.text === 'or' && !standsForLetters(reader.lexemes, reader.at)) return 0;
      // A single letter among examples is a word: "ay: may I play". A letter with an example of its own is a letter: "p
      // like pig and t like top".
      const next = reader.lexemes[reader.at + 1];
      const shown = next?.kind === 'hint' || /^(?:like|as)$/.test(next?.text ?? '');
      if (lexeme.text.length === 1 && lexeme.mark === 'none' && !shown) return 0;
      // Letters after other letters need an example first. Letters after a phrase need none: "longer words: er, or".
      // Endings after ng or nk need none either: "-ng words: ang, ing".
      const unit = rimes[lexeme.text] !== undefined && /^n[gk]$/.test(last?.spelling.letters ?? '');
      const starts =
        unit ||
        (last === undefined
          ? lexeme.text.length > 1 || lexeme.mark !== 'none'
          : last.examples.length > 0 && !fits(lexeme.text, last.spelling.letters));
      if (!starts) return 0;
      reader.readSpelling(spelling, lexeme);
      return 1;
    },
  },
  {
    name: 'something else after "and"',
    example: 'st as in nest and dividing words',
    counterExample: 'st as in nest and best',
    applies: (reader, { i, lexeme: { text } }) => {
      const { last, aside, hinting } = reader;
      if (text !== 'and' || aside || !hinting || last === undefined) return 0;
      if (!beginsAnew(reader, last, i + 1)) return 0;
      reader.divide(true);
      reader.trailing = false;
      return 1;
    },
  },
  {
    name: 'an example',
    example: 'ai (rain)',
    counterExample: 'ai rain',
    applies: (reader, { i, spelling, lexeme: { text, mark } }) => {
      const { last, aside, hinting } = reader;
      if (!aside && !hinting) return 0;
      if (
        aside &&
        /^(?:new|mixed|practi[cs]e|review|only|again|intro|introduce|continued|cont|spelling|reading|revisit|recap)$/.test(
          text,
        ) &&
        !(last !== undefined && fits(text, last.spelling.letters))
      ) {
        // The letters in "h (review)" may not be new.
        if (/^(?:review|revisit|recap)$/.test(text) && reader.chunk !== null) reader.chunk.hedged = true;
        return 1;
      }
      // A remark about examples: "the snow one, not the cow one".
      if (
        aside &&
        /^(?:not|never|no)$/.test(text) &&
        /^(?:word|sound)$/.test(reader.lexemes[i + 1]?.kind ?? '')
      ) {
        let end = i + 1;
        while (/^(?:word|sound|note|meant)$/.test(reader.lexemes[end]?.kind ?? '')) end += 1;
        return end - i;
      }
      // A sound written in letters: "both said shun".
      if (
        last !== undefined &&
        text.length > 2 &&
        /^(?:shun|zhun|chun|cher|chur|zher|zhur|uhl|idj|ij)$/.test(text)
      ) {
        if (last.spelling.candidates.some((id) => soundPhrase(text).within?.has(id)))
          last.sounds.push(soundPhrase(text));
        return 1;
      }
      // In "forms of in-: im-" and "starts with l: bl" the last letters are not words.
      if (!aside && spelling !== null && (mark !== 'none' || /^[^aeiouy]{2,}$/.test(text))) return 0;
      if (/^(?:the|and|or|in|of|as|like|sounds?|words?)$/.test(text)) return 1;
      if (/^(?:ones?|kind|type|both|says?)$/.test(text) && reader.lexemes[i - 1]?.kind === 'word') return 1;
      // Each word is an example of its own letters: "er, or, ar (helper, doctor, dollar)".
      const shown = [last, ...reader.lastSpelled(6)].find(
        (one) => one !== undefined && fits(text, one.spelling.letters),
      );
      if (shown !== undefined && last !== undefined && shown !== last) shown.spread = last.spread = true;
      (shown ?? last ?? reader.chunk)?.examples.push(text);
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
      const owned = chunk.phrases.some(({ ids }) => ids.includes('possessive'));
      const alone =
        owned || after?.kind !== 'word' || /^(?:and|or)$/.test(after.text) || lexeme.text.includes("'");
      const shown = reader.lastSpelled(4).find((one) => fits(lexeme.text, one.spelling.letters));
      const meant = shown !== undefined || lexeme.cut === true;
      if (!meant && (chunk.spelled.length > 0 || spelling !== null || !alone)) return 0;
      // In "wa as in wash, war as in warm", war is short and known as letters. It is no example of wa.
      if (shown !== undefined && spelling !== null && lexeme.text.length <= 3) return 0;
      if (lexeme.text === 'and' || lexeme.text === 'or') return 0;
      (shown ?? chunk).examples.push(lexeme.text);
      reader.touch();
      return 1;
    },
  },
];

/** Words that introduce letters or a phrase and are not examples themselves. */
const leadsToLetters =
  /^(?:the|spellings?|words?|add|adding|divide|dividing|suffix|suffixes|prefix|prefixes|letters?|initial|final|beginning|ending|endings)$/;

/**
 * Whether the words after "and" are about something other than the letters before it. They are then neither an example
 * nor a sound of these letters.
 */
function beginsAnew({ lexemes }: ClauseReader, last: Spelled, at: number): boolean {
  const next = lexemes[at];
  if (next === undefined) return false;
  const says = (within: ReadonlySet<string> | null | undefined) =>
    last.spelling.candidates.some((id) => within?.has(id));
  if (next.kind === 'sound') return !says(soundPhrase(next.text).within);
  if (next.kind === 'meant') return true;
  if (next.kind !== 'word' || next.cut === true) return false;
  const [phrase, length] = phraseAt(lexemes, at);
  if (phrase !== null && (length > 1 || !fits(next.text, last.spelling.letters))) return !says(phrase.within);
  if (next.mark !== 'none') return findSpelling(next.text, next.mark) !== null;
  if (leadsToLetters.test(next.text)) return lexemes[at + 1]?.kind !== 'close';
  const joint = lexemes[at + 1];
  const explained =
    /^(?:is|hint|open|list|sound)$/.test(joint?.kind ?? '') ||
    /^(?:as|says?|saying|for|spells?|makes?)$/.test(joint?.text ?? '');
  return explained && !fits(next.text, last.spelling.letters) && findSpelling(next.text, 'none') !== null;
}
