import type { ClauseReader } from './clause-reader.ts';
import { soundPhrase } from './sound-phrase.ts';
import { findSpelling } from './spellings.ts';
import type { Lexeme } from './split-lexemes.ts';

/** Reads lexemes that are not words: punctuation, a sound, or the result of words read together. */
export function readSign(reader: ClauseReader, lexeme: Lexeme, i: number): void {
  switch (lexeme.kind) {
    case 'break':
      // "(plus wor)" is about other letters than the ones before the brackets.
      if (lexeme.text === 'plus') reader.aside = false;
      reader.divide();
      if (lexeme.text === '') reader.endSentence();
      break;
    case 'is':
      // "er = ir = ur" lists letters with one sound.
      // "ai=ay" has two spellings of one sound. "ph = f" has one spelling and its sound.
      if (lexeme.text === '=' && joinsTeams(reader.lexemes, i)) reader.divide();
      else if (
        lexeme.text === '=' &&
        reader.lexemes.filter(({ text }) => text === '=').length > 1 &&
        !reader.lexemes.some(({ text }) => text === ',')
      )
        reader.divide();
      else if (lexeme.text === '' && partsLetters(reader.lexemes, i)) reader.divide();
      else readColon(reader, i);
      break;
    case 'hint':
    case 'list':
      announce(reader, lexeme);
      break;
    case 'note':
      reader.note(lexeme);
      break;
    case 'every':
      readEvery(reader, lexeme);
      break;
    case 'meant':
      reader.readHeading(
        { ids: lexeme.ids!, sure: lexeme.open !== true, within: null, keeps: [] },
        lexeme,
        1,
        false,
      );
      break;
    case 'open':
      openBracket(reader, i);
      break;
    case 'close':
      reader.depth = Math.max(0, reader.depth - 1);
      // After `/oo/ (moon)` the letters are still to come.
      if (reader.depth === 0 && !reader.aside && reader.scope?.chunk.spelled.length !== 0)
        reader.scope = null;
      if (reader.depth === 0) reader.aside = reader.hinting = false;
      break;
    default:
      reader.readHeading(soundPhrase(lexeme.text), lexeme, 1, true);
  }
}

/** Reads "both sounds" as a remark about the letters before it. */
function readEvery(reader: ClauseReader, lexeme: Lexeme): void {
  if (reader.last !== undefined) reader.last.every = Number(lexeme.text) || Number.POSITIVE_INFINITY;
  // In "silent e with long u, both sounds" the remark adds nothing, because all sounds were meant before.
  else if (reader.chunk !== null && reader.chunk.known > 0) reader.touch();
  else reader.wait(lexeme);
}

/** Whether a dash only separates single letters: "r – w – c". */
function partsLetters(lexemes: readonly Lexeme[], i: number): boolean {
  if (lexemes[i - 2]?.kind === 'word') return false;
  return [lexemes[i - 1], lexemes[i + 1]].every((one) => one?.kind === 'word' && /^[a-z]$/.test(one.text));
}

function joinsTeams(lexemes: readonly Lexeme[], i: number): boolean {
  return [lexemes[i - 1], lexemes[i + 1]].every(
    (one) =>
      one?.kind === 'word' &&
      /^[aeiou][aeiouyw]$/.test(one.text) &&
      findSpelling(one.text, one.mark) !== null,
  );
}

function openBracket(reader: ClauseReader, i: number): void {
  reader.depth += 1;
  if (reader.depth > 1 || reader.chunk === null) return;
  if (reader.scope?.chunk === reader.chunk && reader.chunk.spelled.length === 0 && !reader.broken)
    reader.scope.strong = true;
  else if (reader.chunk.known === 0 && bracketsLetters(reader.lexemes, i)) reader.dropNickname();
  else reader.aside = true;
}

/** Whether brackets that open at `i` contain nothing but letters: `(ff, ll, ss, zz)`. */
function bracketsLetters(lexemes: readonly Lexeme[], i: number): boolean {
  let letters = 0;
  for (let at = i + 1; at < lexemes.length && lexemes[at]!.kind !== 'close'; at++) {
    const { kind, text, mark } = lexemes[at]!;
    if (kind === 'break' || kind === 'sound' || text === 'and' || text === 'or') continue;
    if (kind !== 'word' || findSpelling(text, mark) === null) return false;
    letters += 1;
  }
  return letters > 0;
}

/** Reads "such as" and "spelled". The list of a heading follows. After "such as" examples may follow instead. */
function announce(reader: ClauseReader, { kind, text }: Lexeme): void {
  const examples = kind === 'hint';
  const scope = reader.scope ?? reader.dormant;
  const { chunk } = reader;
  if (scope !== null && scope.chunk === chunk && chunk.spelled.length === 0) {
    // The sound in "/ch/ (including tch)" also has its own letters.
    const { heading } = scope;
    if (heading.sound && reader.depth > 0 && text.startsWith('includ'))
      chunk.phrases.push({ ...heading, keeps: heading.ids });
    reader.scope = scope;
    scope.strong = true;
    reader.broken = false;
  } else if (chunk !== null && chunk.known === 0 && !chunk.rest && !reader.aside) {
    // If a name is unknown, only the letters count: "words with two consonants, such as st".
    reader.dropNickname();
    return;
  }
  reader.hinting = examples && chunk !== null;
}

/**
 * Reads a colon or a similar sign. It announces a list after a heading, examples after letters, and anything after
 * other words.
 */
function readColon(reader: ClauseReader, i: number): void {
  const { chunk, dormant } = reader;
  // The heading may be before a comma: "the short vowels, one a week: a, i".
  if (reader.scope === null && dormant !== null && dormant.chunk === chunk) reader.scope = dormant;
  const { scope } = reader;
  if (scope !== null && scope.chunk === chunk) {
    scope.strong ||= chunk.spelled.length === 0;
    reader.announced = scope.heading;
    // "suffix -s: cats, runs", "doubling: hop, hopping"
    reader.hinting = chunk.spelled.length > 0 || showsWord(reader.lexemes[i + 1]);
  } else if (chunk !== null && chunk.known === 0 && !chunk.rest && !reader.aside) reader.dropNickname();
  else reader.hinting = chunk !== null && chunk.known > 0;
}

/** Whether a lexeme is a word rather than letters. */
function showsWord(lexeme: Lexeme | undefined): boolean {
  return (
    lexeme?.kind === 'word' &&
    lexeme.mark === 'none' &&
    lexeme.text.length > 2 &&
    findSpelling(lexeme.text, 'none') === null
  );
}
