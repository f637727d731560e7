import { catalogue } from '../catalogue/catalogue.ts';
import type { PatternId } from '../types.ts';
import { ofLetters, ofPhrases } from './chunk-meaning.ts';
import type { Chunk } from './clause-chunk.ts';
import { type CellKind, findColumnKind } from './column-kinds.ts';
import { commonWords } from './common-words.ts';
import { cutClauses, trimEdges } from './cut-clauses.ts';
import { doubtItems } from './doubts.ts';
import type { ImportedItem } from './imported-sequence.ts';
import { cutMarkedWords } from './marked-words.ts';
import { findPhrase, type Phrase } from './phrases.ts';
import { isLeftOver, readClause } from './read-clause.ts';
import type { Clause } from './read-prose.ts';
import { readSightList } from './read-sight-list.ts';
import { readWords } from './read-words.ts';
import {
  deniesTeaching,
  goesOver,
  isLegend,
  isPreparation,
  isRestWeek,
  isReviewWeek,
  isSignature,
  mayPrepare,
  saysNothingAtAll,
  saysNothingNew,
} from './rest-weeks.ts';
import {
  dropNames,
  guesses,
  namesTypes,
  type ReadItem,
  withoutComments,
  withoutVowelNames,
  withoutVowels,
} from './settle-items.ts';
import { leanOnNeighbours, type Settled, settleSpelling } from './settle-spelling.ts';
import { type Lexeme, splitLexemes } from './split-lexemes.ts';
import type { Beside } from './weigh-examples.ts';
import { noNeeds, type WordNeeds } from './word-needs.ts';

export const nothingBeside: Beside = { examples: [], headings: [], needs: noNeeds };

/**
 * Reads the items of one cell or line, in order. `kind` is the kind of its column. `beside` is the content of other
 * cells in the row: with the example bread, a bare `ea` is the ea of bread.
 */
export function readItems(text: string, kind: CellKind, beside: Beside = nothingBeside): readonly ReadItem[] {
  if (isPassedOver(text, kind, beside)) return [item(text.trim(), 'ignored')];
  if (beside.mark !== undefined && kind !== 'by-sight' && text.search(beside.mark) >= 0) {
    const { mark, ...others } = beside;
    return cutMarkedWords(text, mark).flatMap((piece) =>
      piece.words ? [bySightItem(piece.text, 'matched')] : readItems(trimEdges(piece.text), kind, others),
    );
  }
  const clauses = cutClauses(text, onlyAffixes.test(text) ? 'patterns' : kind);
  const apart = shownApart(clauses.map((clause) => clause.text));
  const contracted =
    clauses.length > 1 && /^contractions?\b/i.test(clauses[0]!.text) ? findPhrase(['contraction']) : null;
  const listed = (text: string) => contracted !== null && secondWord.test(text);
  const own: Beside =
    apart.size === 0 ? beside : { ...beside, apart: new Set([...apart, ...(beside.apart ?? [])]) };
  const shown = clauses.flatMap(({ kind: own, text: words }) =>
    own === 'examples' && words.startsWith('(') ? readWords(words).map((word) => word.toLowerCase()) : [],
  );
  const items = clauses.flatMap((clause): readonly ReadItem[] => {
    // A remark in brackets says that there are no words: "m, a (no sight words)".
    const none = noWordsBehind.exec(clause.text);
    if (none !== null)
      return [
        ...readItems(clause.text.slice(0, none.index), clause.kind, beside),
        item(none[0].trim(), 'ignored'),
      ];
    const settled = withoutPatterns(clause, beside);
    if (settled !== null) return settled;
    const evident = shown.length > 0 && own.examples.length === 0 ? { ...own, examples: shown } : own;
    const near = listed(clause.text) ? { ...evident, headings: [contracted!, ...evident.headings] } : evident;
    const read = withoutWords(readPatterns(clause.text, near), clause.text);
    return clause.prose === true || mayPrepare(clause.text) ? guesses(read) : read;
  });
  const read =
    /\b(?:will be|only(?! ha[sdv])|just|first|starting)\b/i.test(text) ||
    clauses.some(({ prose }) => prose === true)
      ? dropNames(items)
      : items;
  // If a cell says that nothing is taught, its unknown text teaches nothing: "carols; no phonics".
  const none = read.some((one) => one.status === 'ignored' && deniesTeaching(one.text));
  return none
    ? read.map((one): ReadItem => (one.status === 'unknown' ? { ...one, status: 'ignored' } : one))
    : read;
}

/** Whether a cell holds notes or examples, or begins with the name of a week of review. */
function isPassedOver(text: string, kind: CellKind, { first }: Beside): boolean {
  if (kind === 'notes' || (kind === 'examples' && !onlyAffixes.test(text))) return true;
  return kind !== 'by-sight' && first !== true && isReviewWeek(text);
}

/** Returns the items of a clause that is a list of words or teaches nothing. Returns null for a clause about patterns. */
function withoutPatterns({ text, kind, words }: Clause, { first }: Beside): readonly ReadItem[] | null {
  if (isLegend(text) || isSignature(text)) return [item(text, 'ignored')];
  if (words !== undefined) return [{ ...item(text, 'guessed'), bySight: [...words] }];
  if (kind === 'notes' || kind === 'examples') return [item(text, 'ignored')];
  if (kind === 'by-sight') return sightItems(text);
  if (isPreparation(text)) return [item(text, 'ignored')];
  // "sight words as they come up" is not a list.
  if (listsWords(text))
    return [bySightItem(text, /[,:–—-]|^(?:\S+\s+){0,3}\S+$/.test(text) ? 'matched' : 'guessed')];
  const rests = isRestWeek(text) || saysNothingAtAll(text) || (goesOver(text) && first !== true);
  return rests ? [item(text, 'ignored')] : null;
}

/** Matches words after a dash: "- scrap, split, strum". */
const dashed = /\s[-–—]\s+[a-z']{3,20}(?:,\s+[a-z']{3,20}){1,20}$/;

/** Treats unknown words in a list after a dash as examples: "/k/ at the start - kid, kit, cot". */
function withoutWords(items: readonly ReadItem[], text: string): readonly ReadItem[] {
  if (text.length > LONGEST_SHOWN || !dashed.test(text)) return items;
  return items.map(
    (one): ReadItem =>
      one.status === 'unknown' && /^[a-z']{3,20}$/.test(one.text) ? { ...one, status: 'ignored' } : one,
  );
}

const withExample = /(?<![\p{L}\p{N}'’-])(\p{L}{1,4})\s*(?:[([]|as in\b|like\b)\s*\p{L}/giu;

/** The longest part of a clause, in characters, that is searched for examples. */
const LONGEST_SHOWN = 800;

/** Second words of contractions that continue after a semicolon: "contractions: is; are; will". */
const secondWord =
  /^(?:with )?(?:not|is|has|are|am|will|have|had|would|us)(?:\s*(?:\/|,|&|\band\b|\bor\b)\s*(?:not|is|has|are|am|will|have|had|would|us))*$/i;

const noWordsBehind =
  /(?<=\S)[ ,;–—-]{0,4}[([]\s?no (?:new )?[\p{L} -]{0,24}words?(?: this week| yet)?\s?[)\]]$/iu;

/** Returns letters that begin several clauses, each with an example: `th (thumb); th (that)`. */
export function shownApart(texts: readonly string[]): ReadonlySet<string> {
  const seen = new Set<string>();
  const twice = new Set<string>();
  for (const text of texts) {
    for (const [, letters = ''] of text.slice(0, LONGEST_SHOWN).matchAll(withExample))
      (seen.has(letters.toLowerCase()) ? twice : seen).add(letters.toLowerCase());
  }
  return twice;
}

/** Matches parts of words: `sub-`, `-ward, -wise`. The name of the column does not matter. */
const onlyAffixes = /^\s*(?:-\p{L}+|\p{L}+-)(?:[\s,/&+]+(?:-\p{L}+|\p{L}+-))*\s*$/u;

/** Returns the items of a clause about patterns. `doubted` is called with the name of each doubt about them. */
export function readPatterns(
  text: string,
  beside: Beside = nothingBeside,
  doubted?: (doubt: string) => void,
): readonly ReadItem[] {
  const lexemes = [...leadOf(text, beside), ...splitLexemes(text)];
  const passed: Lexeme[] = [];
  const { chunks, lexemes: joined } = readClause(lexemes, (rule, lexeme) => {
    if (lexeme !== undefined && isLeftOver(rule)) passed.push(lexeme);
  });
  if (chunks.length === 0) return [item(text, 'unknown')];
  const words = lexemes.filter(({ kind }) => kind === 'word');
  const marked = lexemes.some(({ mark, kind }) => mark !== 'none' || kind === 'sound' || kind === 'meant');
  if (
    saysNothingNew(text) &&
    !marked &&
    chunks.every(({ phrases, spelled }) => phrases.length + spelled.length === 0)
  )
    return [item(text, 'ignored')];
  if (
    chunks.some((chunk) => chunk.known === 0) &&
    words.length > 1 &&
    !lexemes.some(({ kind }) => kind === 'sound') &&
    words.every((word) => commonWords.has(word.text))
  ) {
    return [bySightItem(text, 'guessed')];
  }
  headLists(chunks, joined);
  for (const chunk of chunks) narrowSound(chunk, beside.needs);
  const all = chunks.flatMap(({ spelled }) => spelled);
  // Only near neighbours in a long list are compared. Letters that are part of other letters are usually near them.
  const settled = leanOnNeighbours(
    all.map((one, i) => settleSpelling(one, beside, all.slice(Math.max(0, i - 8), i + 9))),
  );
  const types = namesTypes(chunks);
  const open = /\?\?/.test(text);
  let next = 0;
  const items = chunks.map((chunk, i) => {
    const own = settled.slice(next, next + chunk.spelled.length);
    next += own.length;
    const start = i === 0 ? 0 : chunk.start;
    const piece = textOf(text, lexemes, start, chunks[i + 1]?.start ?? text.length);
    const read = chunkItem(chunk, piece, own, beside);
    // In "-nk??" the teacher does not know yet.
    return withoutVowels(
      open && read.status === 'matched' ? { ...read, status: 'guessed' } : read,
      chunk,
      types,
    );
  });
  const meant = all.map((spelled, i) => ({ spelled, ids: settled[i]!.ids }));
  const kept = withoutVowelNames(items);
  const read = doubtItems({ items: kept, chunks, settled: meant, lexemes: joined, passed }, doubted);
  // A heading that was put before the letters is not part of the text.
  return withoutComments(read.filter(({ text: piece }) => piece !== ''));
}

/**
 * Treats letters after a comma as the list of a heading that includes them all: "Silent e, a_e and i_e", "Long e, ie
 * and ey".
 */
function headLists(chunks: readonly Chunk[], lexemes: readonly Lexeme[]): void {
  chunks.forEach((chunk, i) => {
    const [heading, ...others] = chunk.phrases;
    const next = chunks[i + 1];
    if (heading === undefined || others.length > 0 || next === undefined) return;
    // "Digraphs and tch" are two items.
    const comma = lexemes[findBefore(lexemes, next.start)]?.text === ',';
    const alone = chunk.spelled.length + chunk.examples.length === 0;
    if (!comma || !alone || heading.sound === true || heading.keeps.length > 0) return;
    if (takesList(heading, next, chunks.slice(i + 1))) chunk.announces = true;
  });
}

/** Gives a heading to the letters listed after it. Returns whether the heading only names these letters. */
function takesList(heading: Phrase, next: Chunk, behind: readonly Chunk[]): boolean {
  const { within, sure, ids } = heading;
  if (within === null) return false;
  // A plain phrase may follow the heading: "Suffix rules, drop the e".
  const plain = next.phrases.every((phrase) => phrase.within === null) ? next.phrases : [];
  const meant = plain.flatMap((phrase) => phrase.ids);
  if (meant.length > 0) return !sure && meant.every((id) => within.has(id));
  const end = behind.findIndex(({ phrases, spelled }) => phrases.length > 0 || spelled.length === 0);
  const list = behind.slice(0, end < 0 ? undefined : end).flatMap(({ spelled }) => spelled);
  const fits = list.every((one) => one.spelling.candidates.some((id) => within.has(id)));
  if (list.length === 0 || !fits) return false;
  for (const one of list) if (!one.headings.includes(heading)) one.headings.push(heading);
  // "l blends, bl, cl" may teach all l blends.
  return !sure || ids.every((id) => /^long-|_e(?:-|$)/.test(id));
}

/**
 * Returns the words of a heading that complete the line below: "with not" under contractions, "between two consonants"
 * under dividing.
 */
function leadOf(text: string, { headings }: Beside): readonly Lexeme[] {
  const under = (id: string) =>
    headings.some(({ within, ids }) => within?.has(id) === true && (ids.includes(id) || within.size < 5));
  const lead =
    under('contraction') && /^(?:(?:with|using) )?(?:not|will|is|are|have|has|had|would|am|us)\b/i.test(text)
      ? 'contractions'
      : under('schwa-a') && weakEnding.test(text)
        ? 'schwa'
        : under('possessive') && /^(?:singular|plural)\b/i.test(text)
          ? 'possessives'
          : under('divide-vc-cv') && /^(?:between|before|after)\b(?!.*\ble\b)/i.test(text)
            ? 'dividing'
            : '';
  const affix = lead === '' && bareList.test(text) ? affixesOf(headings) : '';
  const word: Lexeme = { kind: 'word', text: lead || affix, mark: 'none', start: 0, end: 0 };
  return affix === '' ? (lead === '' ? [] : [word]) : [word, { ...word, kind: 'is', text: ':' }];
}

/** "final -en, -on" */
const weakEnding = /^(?:(?:final|unstressed|weak|endings?|in|the) ){0,3}-[aeiou][nmt](?!\p{L})/iu;

/** Matches a list that contains only letters and dividers. */
const bareList = /^\p{Ll}{1,6}(?:(?:[\s,/&]|\band\b)+\p{Ll}{1,6})*$/u;

/** Returns the kind of word parts that a heading such as "Suffixes" or "Prefixes" announces for a list without hyphens. */
function affixesOf(headings: readonly Phrase[]): string {
  for (const { within } of headings) {
    if (within?.has('root-port') === true) return 'roots';
    const [ends, begins] = [within?.has('suffix-ing') === true, within?.has('prefix-un') === true];
    if (ends !== begins) return ends ? 'suffixes' : 'prefixes';
  }
  return '';
}

/** Returns the text of a chunk without the divider before the next chunk. */
function textOf(text: string, lexemes: readonly Lexeme[], start: number, end: number): string {
  let to = end;
  for (let i = findBefore(lexemes, end); i >= 0 && lexemes[i]!.start > start; i--) {
    const { kind, text: word } = lexemes[i]!;
    if (kind !== 'break' && !(word === 'and' && end < text.length)) break;
    to = lexemes[i]!.start;
  }
  return text.slice(start, to).trim();
}

/** Returns the index of the last lexeme that begins before a place, or -1. The lexemes are in order. */
function findBefore(lexemes: readonly Lexeme[], place: number): number {
  let low = 0;
  let high = lexemes.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (lexemes[middle]!.start < place) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}

/** Selects the sound of y that a heading names: "final y" under "Long e". */
function withinHeadings(ids: readonly PatternId[], headings: readonly Phrase[]): readonly PatternId[] {
  if (ids.length < 2 || !ids.every((id) => id.startsWith('y-'))) return ids;
  for (const { within } of headings) {
    const inside = ids.filter((id) => within?.has(id));
    if (inside.length > 0) return inside;
  }
  return ids;
}

function chunkItem(
  chunk: Chunk,
  text: string,
  settled: readonly Settled[],
  { needs, headings }: Beside,
): ReadItem {
  const { known, unknown, phrases } = chunk;
  if (chunk.announces && settled.length === 0) return { ...item(text, 'ignored'), named: true };
  if (known === 0 || (chunk.asks && settled.length === 0) || (unknown > known && !saysEnough(chunk))) {
    if ((chunk.rest && unknown === 0) || goesOver(text) || (known === 0 && saysNothingNew(text)))
      return item(text, 'ignored');
    if (isCommonWord(text)) return bySightItem(text, 'guessed');
    return item(text, 'unknown');
  }
  const meant = settled.length > 0 ? ofLetters(chunk, settled) : ofPhrases(chunk, needs);
  const { sure, confirmed } = meant;
  const ids = settled.length > 0 ? meant.ids : withinHeadings(meant.ids, headings);
  const heads = settled.length === 0 && phrases.every(({ within }) => within !== null);
  // The unread words of a clause may say something else, unless its examples confirm the reading.
  const whole = (unknown === 0 && !chunk.rest && !chunk.hedged) || confirmed;
  return {
    // An item without patterns is unknown rather than a guess: "variant vowels" alone leaves everything open.
    ...item(text, ids.length === 0 ? 'unknown' : sure && whole ? 'matched' : 'guessed'),
    patterns: [...new Set(ids)],
    headings: heads ? phrases : [],
    named: phrases.length > 0,
    partly: unknown > 0,
  };
}

/** Narrows a sound by its examples. `/oo/ (moon)` is the sound of moon, not of book. */
function narrowSound({ phrases, spelled, examples }: Chunk, needsOf: WordNeeds): void {
  const sound = phrases.find((phrase) => phrase.sound);
  if (sound === undefined || spelled.length === 0) return;
  const needed = examples.flatMap((word) => [...needsOf(word)].filter((id) => sound.within!.has(id)));
  if (needed.length === 0) return;
  const sounds = new Set(needed.flatMap((id) => soundsOf.get(id)!));
  const within = new Set([...sound.within!].filter((id) => soundsOf.get(id)!.some((one) => sounds.has(one))));
  for (const one of spelled) {
    const at = one.headings.indexOf(sound);
    if (at >= 0) one.headings[at] = { ...sound, within, ids: sound.ids.filter((id) => within.has(id)) };
  }
}

const soundsOf = new Map(catalogue.map(({ id, sounds }) => [id, sounds]));

/** Whether part of a clause says what is taught although most of its words are unknown. */
function saysEnough({ phrases, spelled }: Chunk): boolean {
  return (
    spelled.some(({ spelling }) => spelling.letters.length > 1) ||
    phrases.some(({ sure, sound }) => sure || sound === true)
  );
}

/** The most words of a list before its name. A longer text is prose that ends in `by sight`. */
const LONGEST_BEFORE_NAME = 10;

/** Whether a text is a list of by-sight words: `Sight words the, of` without a colon, or `the, of (sight words)`. */
function listsWords(text: string): boolean {
  const words = text.split(/[\s,:–—]+/).filter((word) => word !== '');
  for (let length = 1; length <= Math.min(4, words.length); length++) {
    const ends = [
      words.slice(0, length).join(' '),
      words
        .slice(-length)
        .join(' ')
        .replace(/^\(|\)$/g, ''),
    ];
    const [name] = ends.filter(
      (end, i) =>
        findColumnKind(end) === 'by-sight' &&
        (i === 0 || (words.length <= LONGEST_BEFORE_NAME && !(/wall/i.test(end) && !/[,(]/.test(text)))),
    );
    // "irregular" or "tricky" alone may begin a sentence.
    if (name !== undefined && (/[ -]/.test(name) || /^(hfw?|cew)s?$/i.test(name))) return true;
  }
  return false;
}

function isCommonWord(text: string): boolean {
  // "i" is a letter, "I" a word.
  return !/^-|-$|^i$/.test(text.trim()) && commonWords.has(text.toLowerCase().replace(/[^\p{L}']/gu, ''));
}

/** Part of a by-sight list that mentions words without naming them: "the three from her worksheet". */
const untold =
  /(?:^|,\s*|\band\s+)((?:the|any|all|some|whichever|other|those)\s+(?:\p{L}+\s+){1,4}(?:from|on|in|of|off)\s+(?:the|her|his|our|my|their|last|this)\s+[\p{L} ]+)$/iu;

function sightItems(text: string): readonly ReadItem[] {
  const told = untold.exec(text);
  if (told === null) return [bySightItem(text, 'matched')];
  const piece = told[1]!;
  const before = text.slice(0, text.length - piece.length).replace(/[,\s]+(?:and\s*)?$/i, '');
  return [...(/\p{L}/u.test(before) ? [bySightItem(before, 'matched')] : []), item(piece, 'unknown')];
}

function bySightItem(text: string, status: 'matched' | 'guessed'): ReadItem {
  const none = findColumnKind(text) === 'by-sight' || noWords.test(text);
  const { words, sure } = none ? { words: [], sure: true } : readSightList(text);
  return { ...item(text, words.length === 0 ? 'ignored' : sure ? status : 'guessed'), bySight: [...words] };
}

/** Matches text that says there is no list of words: "Memory words: none", "no new words". */
const noWords =
  /^(?:[^:]{1,40}:\s*)?(?:(?:sight|high[- ]frequency) words? (?:checks?|reviews?|tests?|quiz(?:zes)?|games?|assessment)|pages? \d.*|all (?:the |these |of the )?(?:sight )?words? (?:to date|so far|above|again|taught.*|from .*)|no(?:ne)? (?:new|more|sight|words?|this|yet|tricky|list)\b.*|none[.!]?|nil|n\s?\/\s?a\.?|reviews?(?: .*)?|revision|catch[ -]?up|tests?|quiz|assessment)$/i;

function item(text: string, status: ImportedItem['status']): ReadItem {
  return { text, status, patterns: [], bySight: [], headings: [], named: false };
}
