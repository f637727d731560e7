import type { Chunk } from './clause-chunk.ts';
import { ClauseReader } from './clause-reader.ts';
import { commonWords } from './common-words.ts';
import { fits } from './fits.ts';
import { applyNotations } from './notation-rules.ts';
import { phraseAt } from './phrase-at.ts';
import { beginsPhrase } from './phrases.ts';
import { readSign } from './read-sign.ts';
import { settleAnnouncement } from './settle-announcement.ts';
import { findSpelling, looseEnding, type Spelling } from './spellings.ts';
import type { Lexeme } from './split-lexemes.ts';
import { wordRules } from './word-rules.ts';

/** Is called with the name of each rule that applied, and with the word it applied to. */
type Used = (rule: string, lexeme?: Lexeme) => void;

/**
 * Reads one clause of a sequence into chunks, from left to right. `vowel teams ai, ay` is one chunk. `short a, m, s` is
 * three, because m and s are not spellings of short a. `lexemes` are the lexemes from which the chunks were read.
 */
export function readClause(
  written: readonly Lexeme[],
  used: Used = () => {},
): { readonly chunks: readonly Chunk[]; readonly lexemes: readonly Lexeme[] } {
  const lexemes = applyNotations(markBracketed(markExamples(written)), used);
  const reader = new ClauseReader(lexemes, used);
  for (let i = 0; i < lexemes.length; ) {
    const lexeme = lexemes[i]!;
    reader.at = i;
    if (lexeme.kind === 'word') i += readWord(reader, i, used);
    else {
      readSign(reader, lexeme, i);
      i += 1;
    }
  }
  const chunks = reader.finish();
  settleAnnouncement(lexemes, chunks);
  return { chunks: joinName(lexemes, chunks), lexemes };
}

/** The most lexemes before the sign that are searched for letters. */
const MOST_LETTERS = 40;

/**
 * Marks words as examples: "-st, -ft, -lk – best, soft, sulk". If only words follow a sign and most of them contain the
 * letters before it, all are examples, whatever other meaning they may have.
 */
function markExamples(lexemes: readonly Lexeme[]): readonly Lexeme[] {
  const sign = lexemes.findLastIndex(({ kind }) => kind === 'is');
  const behind = lexemes.slice(sign + 1);
  const words = behind.filter(({ kind }) => kind === 'word');
  const plain = behind.every(
    ({ kind, text, mark }, i) =>
      (kind === 'word') !== (behind[i - 1]?.kind === 'word') &&
      (kind === 'break' ||
        (kind === 'word' && mark === 'none' && /^[a-z]{2,}$/.test(text) && /[aeiouy]/.test(text))),
  );
  if (sign < 1 || words.length < 2 || !plain) return lexemes;
  const letters = lexemes
    .slice(Math.max(0, sign - MOST_LETTERS), sign)
    .flatMap(({ kind, text, mark }) => (kind === 'word' && findSpelling(text, mark) !== null ? [text] : []));
  const shown = words.filter(({ text }) => letters.some((one) => fits(text, one)));
  const alsoLetters = words.filter(({ text, mark }) => findSpelling(text, mark) !== null);
  if (shown.length * 2 < words.length || alsoLetters.length * 2 > words.length) return lexemes;
  return lexemes.map((one, i) => (i > sign && one.kind === 'word' ? { ...one, cut: true } : one));
}

/**
 * Marks words in brackets as examples where most of them have no other meaning: team in "(feet, seed, team, leaf)". In
 * "(blends, digraphs)" both have one.
 */
function markBracketed(lexemes: readonly Lexeme[]): readonly Lexeme[] {
  const examples = new Set<Lexeme>();
  let open = -1;
  lexemes.forEach(({ kind }, i) => {
    if (kind === 'open') open = i;
    if (kind !== 'close' || open < 0) return;
    const inside = lexemes.slice(open + 1, i);
    open = -1;
    const words = inside.filter((one) => one.kind === 'word');
    const plain = inside.every((one, n) =>
      n % 2 === 0
        ? one.kind === 'word' && one.mark === 'none' && /^(?=.*[aeiouy])[a-z]{3,}$/.test(one.text)
        : one.kind === 'break',
    );
    const named = words.filter(({ text }) => beginsPhrase(text));
    if (plain && named.length > 0 && named.length * 2 < words.length)
      for (const one of words) examples.add(one);
  });
  return examples.size === 0
    ? lexemes
    : lexemes.map((one) => (examples.has(one) ? { ...one, cut: true } : one));
}

/** Merges unknown words with the letters they name, if nothing separates the two: "Puffin letters ff, ll, ss". */
function joinName(lexemes: readonly Lexeme[], chunks: readonly Chunk[]): readonly Chunk[] {
  const [name, first, ...others] = chunks;
  if (name === undefined || first === undefined || others.length === 0) return chunks;
  const onlyLetters = ({ phrases, spelled, unknown }: Chunk) =>
    phrases.length + unknown === 0 &&
    spelled.length > 0 &&
    spelled.every(({ spelling: { letters } }) => letters.length > 1 && !commonWords.has(letters));
  const parted = lexemes.findLast(({ start }) => start < first.start)?.kind === 'break';
  const names = name.known === 0 && !name.rest && !name.asks && !parted;
  if (!names || !onlyLetters(first) || !others.every(onlyLetters)) return chunks;
  return [{ ...first, start: name.start }, ...others];
}

/** Reads the word at `i` by the first rule that applies. Returns the number of lexemes taken. */
function readWord(reader: ClauseReader, i: number, used: Used): number {
  const lexeme = reader.lexemes[i]!;
  const within = reader.scope?.heading.within ?? new Set();
  const affix = [...within].some((id) => /^(suf|pre)fix-/.test(id));
  const [phrase, length] = lexeme.cut === true ? [null, 0] : phraseAt(reader.lexemes, i);
  const listed = affix ? findSpelling(lexeme.text, lexeme.mark, true) : null;
  // Under "endings" a bare `in` is no prefix.
  const fits = listed?.candidates.some((id) => within.has(id)) === true;
  const own = fits ? listed : findSpelling(lexeme.text, lexeme.mark);
  const spelling = lexeme.cut === true ? null : (own ?? shownEnding(reader.lexemes, i));
  const word = { i, lexeme, phrase, length, spelling };
  for (const { name, applies } of wordRules) {
    const taken = applies(reader, word);
    if (taken === 0) continue;
    used(name, lexeme);
    if (name !== DIVIDES) reader.prose = prose.has(name);
    return taken;
  }
  return 1;
}

/** Reads an ending that nobody lists but that its examples explain: `-ain (mountain, captain)`, `-ain in mountain`. */
function shownEnding(lexemes: readonly Lexeme[], i: number): Spelling | null {
  const { mark, text } = lexemes[i]!;
  if (mark !== 'suffix') return null;
  const joint = lexemes[i + 1];
  const leads = /^(?:open|is|hint)$/.test(joint?.kind ?? '') || /^(?:in|as|like)$/.test(joint?.text ?? '');
  const shown = lexemes[i + 2];
  const fits = shown?.kind === 'word' && shown.text.length > text.length && shown.text.endsWith(text);
  return leads && fits ? looseEnding(text) : null;
}

/** The rules for words that are neither letters nor a phrase. `DIVIDES` is the rule that leaves this open. */
const prose = new Set(['a word that says nothing of its own', 'a word nobody knows']);
const DIVIDES = 'a word that divides';

/** Whether a rule leaves a word unused. */
export const isLeftOver = (rule: string) =>
  prose.has(rule) || rule === 'an example' || rule === 'another example';
