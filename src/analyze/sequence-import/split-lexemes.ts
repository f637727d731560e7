import type { PatternId } from '../types.ts';
import { commonWords } from './common-words.ts';
import { isShortened, isTrade, mendWord } from './mend-word.ts';
import { soundsByName } from './sound-names.ts';
import { findSpelling, type Mark } from './spellings.ts';

/**
 * A piece of an item's text.
 * - `sound`: the text between slashes
 * - `break`: a divider of items
 * - `is`: a colon, equals sign or dash between a name and its meaning
 * The rest of the punctuation has no meaning. `notation-rules` makes further kinds from several words:
 * - `hint`: examples follow
 * - `list`: a list follows
 * - `note`: says nothing about the content taught
 * - `every`: all sounds of the letters before it, or as many as its text says
 * - `meant`: the patterns `ids`
 */
export interface Lexeme {
  readonly kind:
    | 'word'
    | 'sound'
    | 'break'
    | 'is'
    | 'open'
    | 'close'
    | 'hint'
    | 'list'
    | 'note'
    | 'every'
    | 'meant';
  readonly ids?: readonly PatternId[];
  /** Whether a `meant` lexeme may also have another meaning. */
  readonly open?: true;
  /** Whether the word was divided into syllables. Such a word is an example, whatever it says. */
  readonly cut?: true;
  /** The text in lower case. A split digraph is written as `a_e`, and an affix has no hyphen. */
  readonly text: string;
  readonly mark: Mark;
  readonly start: number;
  readonly end: number;
}

const singles: Readonly<Record<string, Lexeme['kind']>> = {
  ',': 'break',
  '&': 'break',
  '+': 'break',
  '/': 'break',
  '·': 'break',
  ':': 'is',
  '=': 'is',
  '(': 'open',
  '[': 'open',
  ')': 'close',
  ']': 'close',
};

const word = /[\p{L}\p{N}\p{M}_'\u2019\u02bc\u2010-\u2015-]+/uy;
const slashed = /\/([^/\s,;()]{1,6})\//y;
// "w/" is with.
/** `<ai>` contains no arrow. */
const arrow = /[-=]+>|(?<=\s|\by)>(?=\s|i\b)|[→⇒➔➜➝]/iy;
const plain = /w\/(?=\s)/iuy;
const abbreviation = /(?:e\.\s?g\.?|i\.\s?e\.?|ex\.)(?![\p{L}\p{N}])/iuy;
/** Matches teachers and grades: `Mrs. P.`, `Ms Okafor`, `K-2`. */
const teacher =
  /(?<![\p{L}\p{N}])(?:(?:Mrs?|Ms|Miss|Dr|Sr)\.?\s+\p{Lu}(?:\p{Ll}+|\.)?|[KR][-–]\d|[Gg]r\.?\s\d{1,2})(?![\p{L}\p{N}])/uy;
/** Matches an initial and a surname after other words: "Rm 14, J. Teixeira". "Part B. Digraphs" does not match. */
const initialed = /(?<=(?:[\p{L}\p{N}]{2},|[-–—(]|\bby)\s?)\p{Lu}\.\s+(\p{Lu}\p{L}{3,})(?![\p{L}\p{N}])/uy;

function personAt(text: string, at: number): string | undefined {
  teacher.lastIndex = initialed.lastIndex = at;
  const titled = teacher.exec(text)?.[0];
  if (titled !== undefined) return titled;
  const found = initialed.exec(text);
  const name = found?.[1]?.toLowerCase() ?? '';
  return found === null || isTrade([name, `${name}s`]) ? undefined : found[0];
}

const listMarker =
  /^\s*(?:\(?\d{1,3}[.)]|\((?:[ivx]{1,5}|[a-h])\)|(?:[ivx]{2,5}|[a-h])\)|[A-Z]\.(?=\s+\p{L}{2}))\s+/u;
/** The number of a line in its own numbering: `B3`, `RF.1.3.a`, `2.4`. `a-e` and `2 sounds` do not match. */
const lineCode =
  /^\s*\(?(?=[\p{L}.]*\d)(?:(?:[\p{L}]{1,4}|\d{1,3})\.)*(?:[\p{Lu}]{1,3}\d{1,3}[a-z]?|(?<=\.)(?:\d{1,3}[a-z]?|[a-z]))[.):]?\s+(?=\S)/u;

/** Cuts one line of a sequence into lexemes. `ai (rain), a-e /ā/` → ai ( rain ) , a_e /ā/. */
export function splitLexemes(text: string): readonly Lexeme[] {
  const lexemes: Lexeme[] = [];
  const arrows = text.match(/[-=]+>|\s>\s|[→⇒➔➜➝]/g)?.length ?? 0;
  let at = (listMarker.exec(text) ?? lineCode.exec(text))?.[0].length ?? 0;
  const add = (kind: Lexeme['kind'], end: number, name = '', mark: Mark = 'none') => {
    lexemes.push({ kind, text: name, mark, start: at, end });
    at = end;
  };
  while (at < text.length) {
    const sound = text[at] === '/' ? soundAt(text, at) : null;
    if (sound !== null) {
      add('sound', at + sound.length + 2, sound);
      continue;
    }
    arrow.lastIndex = at;
    const [leads] = '-=>→⇒➔➜➝'.includes(text[at]!) ? (arrow.exec(text) ?? []) : [];
    if (leads !== undefined) {
      // One arrow leads to examples, and several arrows divide a list. `y→i` is always a change.
      const before = text.slice(Math.max(0, at - 5), at);
      const changes =
        /(?<!\p{L})(?:y|fe?)\s*$/iu.test(before) && /^\s*-?[iv]/i.test(text.slice(at + leads.length));
      // The arrow is between two forms of an example: "act > action".
      const [form = ''] = /\p{L}{3,}\s*$/u.exec(text.slice(Math.max(0, at - 20), at)) ?? [];
      const forms =
        form !== '' &&
        text
          .slice(at + leads.length, at + leads.length + 30)
          .trimStart()
          .toLowerCase()
          .startsWith(
            form
              .trim()
              .slice(0, form.trim().length > 4 ? 4 : 2)
              .toLowerCase(),
          );
      if (forms) at += leads.length;
      else add(arrows > 1 && !changes ? 'break' : 'is', at + leads.length, '→');
      continue;
    }
    const kind = singles[text[at]!];
    if (kind !== undefined) {
      add(kind, at + 1, text[at]);
      continue;
    }
    plain.lastIndex = at;
    if (plain.test(text)) {
      add('word', at + 2, 'with');
      continue;
    }
    abbreviation.lastIndex = at;
    const short = abbreviation.exec(text)?.[0];
    if (short !== undefined) {
      add('hint', at + short.length);
      continue;
    }
    const person = personAt(text, at);
    if (person !== undefined) {
      add('note', at + person.length);
      continue;
    }
    word.lastIndex = at;
    const found = word.exec(text)?.[0];
    if (found === undefined) {
      // A shortened word is followed by a full stop: `init. bl`.
      const isShort = isShortened(
        lexemes.at(-1)?.end === at ? (/\p{L}+$/u.exec(text.slice(0, at))?.[0] ?? '') : '',
      );
      if (text[at] === '.' && text[at + 1] === ' ' && !isShort) add('break', at + 1);
      else at += 1;
      continue;
    }
    const { word: wholly, length } = writtenAt(text, at, found);
    if (wholly === '') {
      at += found.length;
      continue;
    }
    for (const part of splitWord(wholly)) {
      const { start: _, ...rest } = part;
      // An opening quote belongs to its word.
      const quoted = part.start === 0 && /["“‘<]/.test(text[at - 1] ?? ' ') ? 1 : 0;
      lexemes.push({ ...rest, start: at + part.start - quoted, end: at + part.end });
    }
    at += length;
  }
  return joinSyllables(text, enumerated(numberedAtEnd(text, doubledAtStart(text, withAnd(lexemes)))));
}

/**
 * Returns a word as it is meant and the number of characters it takes. The hyphen of an arrow (`y->i`) and a closing
 * quote are left out.
 */
function writtenAt(
  text: string,
  at: number,
  found: string,
): { readonly word: string; readonly length: number } {
  if (text[at + found.length] === '>' && found.endsWith('-')) {
    const word = found.replace(/-+$/, '');
    return { word, length: word.length };
  }
  if (text[at - 1] === '‘' && found.endsWith('’')) return { word: found.slice(0, -1), length: found.length };
  // "BL, CL, FL" are letters. "BL" alone is short for blends.
  const listed =
    /^\p{Lu}{2}$/u.test(found) && /^\s*[,/]\s*\p{Lu}{2}(?!\p{L})/u.test(text.slice(at + found.length));
  return { word: listed ? found.toLowerCase() : found, length: found.length };
}

/** Turns an & between two ordinary words into the word "and": "letter names & sounds". */
function withAnd(lexemes: readonly Lexeme[]): readonly Lexeme[] {
  const isWord = (one: Lexeme | undefined) =>
    one?.kind === 'word' &&
    one.mark === 'none' &&
    /^[a-z]{4,}$/.test(one.text) &&
    findSpelling(one.text, 'none') === null;
  return lexemes.map((one, i) =>
    one.kind === 'break' && one.text === '&' && isWord(lexemes[i - 1]) && isWord(lexemes[i + 1])
      ? { ...one, kind: 'word', text: 'and' }
      : one,
  );
}

/** Removes letters or numbers that only count the text after them: "(a) short a (b) short e". */
function enumerated(lexemes: readonly Lexeme[]): readonly Lexeme[] {
  const isMark = (i: number) =>
    lexemes[i]?.kind === 'open' &&
    /^(?:[a-h]|\d)$/.test(lexemes[i + 1]?.text ?? '') &&
    lexemes[i + 2]?.kind === 'close';
  const marks = lexemes.flatMap((_, i) => (isMark(i) ? [i] : []));
  const code = (i: number) => lexemes[i + 1]!.text.charCodeAt(0);
  const runs = marks.length > 1 && marks.every((at, n) => n === 0 || code(at) === code(marks[n - 1]!) + 1);
  if (!runs) return lexemes;
  return lexemes.flatMap((one, i): Lexeme[] => {
    if (marks.includes(i)) return [{ ...one, kind: 'break', text: ',', end: lexemes[i + 2]!.end }];
    return marks.includes(i - 1) || marks.includes(i - 2) ? [] : [one];
  });
}

/** Treats the end of "Vowel Teams I" as the number of a part, not as a letter. "Vowels: A, I" has letters. */
function numberedAtEnd(text: string, lexemes: readonly Lexeme[]): readonly Lexeme[] {
  const last = lexemes.at(-1);
  const before = lexemes.at(-2);
  const numbers =
    last?.kind === 'word' &&
    /^[IVX]$/.test(text.slice(last.start, last.end)) &&
    before?.kind === 'word' &&
    /[a-z]{4}s$/.test(before.text) &&
    !/^(?:vowels|letters|sounds|consonants|shorts|longs|words)$/.test(before.text);
  return numbers ? [...lexemes.slice(0, -1), { ...last, kind: 'note', text: '' }] : lexemes;
}

/**
 * Reads doubled letters at the start of a line: "Ee, oa", "Oo (moon)". The capital belongs to the line. In "Ee, Ff" it
 * belongs to the letter.
 */
function doubledAtStart(text: string, lexemes: readonly Lexeme[]): readonly Lexeme[] {
  const [first, ...others] = lexemes;
  const [, letter = ''] =
    first === undefined ? [] : (/^([EOFLSZ])[eoflsz](?![\p{L}\p{N}])/u.exec(text.slice(first.start)) ?? []);
  if (first?.text !== letter.toLowerCase() || letter === '') return lexemes;
  const pairs =
    text.match(/(?<!\p{L})(\p{Lu})\p{Ll}(?!\p{L})/gu)?.filter((pair) => pair[0]!.toLowerCase() === pair[1]) ??
    [];
  const doubled = letter.toLowerCase().repeat(2);
  const shows = others.some(
    ({ kind, text: word }) =>
      kind === 'word' && (word.includes(doubled) || /^(?:[aeiou][aeiouyw]|ff|ll|ss|zz)$/.test(word)),
  );
  return pairs.length === 1 && shows ? [{ ...first, text: doubled }, ...others] : lexemes;
}

/** Words that may be on both sides of a hyphen without being a division into syllables: y-to-i, e-dropping. */
const joints =
  /^(?:to|and|or|by|plus|drop|dropping|double|doubled|silent|magic|final|word|words|vowel|one|two|three)$/;

/** Words in a clause whose examples are divided by slashes or dots: `VC/CV (mag/net)`, but not `ai (rain/train)`. */
const dividesWords =
  /syll|divi|\b(?:VC|CV|V\/|V\||compound|schwa|longer|multi|stable)|consonant[ -]?le\b|-le\b|\b(?:open|closed)\b/i;

/** Returns the end of a word that begins at `i` and is divided into syllables: nap-kin, ho/tel, fan·tas·tic. */
function endOfPieces(text: string, lexemes: readonly Lexeme[], i: number, slashes: boolean): number {
  let end = i + 1;
  for (;;) {
    const before = lexemes[end - 1]!;
    const sign = text[before.end] ?? '';
    const joint = slashes && '/·|'.includes(sign) && lexemes[end]?.kind === 'break' ? end + 1 : end;
    const next = lexemes[joint];
    const joins = /[-‐-―]/.test(sign) || (slashes && sign !== '' && '/·|'.includes(sign));
    if (!joins || next?.kind !== 'word' || next.start !== before.end + 1) return end;
    end = joint + 1;
  }
}

/**
 * Joins words divided into syllables in places for examples: `Closed: nap-kin, tem-pest`, `-sion (tel-e-vi-sion)`,
 * `V/CV [ho/tel]`.
 */
function joinSyllables(text: string, lexemes: readonly Lexeme[]): readonly Lexeme[] {
  const read: Lexeme[] = [];
  const slashes = dividesWords.test(text);
  // Whether the last piece was a word divided into syllables, or may be followed by one.
  let shown = false;
  let depth = 0;
  for (let i = 0; i < lexemes.length; i++) {
    const lexeme = lexemes[i]!;
    const typed = text.slice(lexeme.start, lexeme.end).toLowerCase();
    const after = lexemes[i + 1]?.kind;
    if (shown && /^(?:digs?|fins?|prefs?|suffs?)$/.test(typed) && after !== 'word' && after !== 'is') {
      read.push({ ...lexeme, text: typed, cut: true });
      continue;
    }
    const end = shown && lexeme.kind === 'word' ? endOfPieces(text, lexemes, i, slashes) : i + 1;
    const parts = lexemes.slice(i, end).filter(({ kind }) => kind === 'word');
    const cut =
      parts.length > 1 &&
      parts.every(
        ({ text, mark }) => mark === 'none' && /^[a-z]*[aeiouy][a-z]*$/.test(text) && !joints.test(text),
      ) &&
      // "open (he/me)", "(ai/ay)" are lists.
      !parts.every(({ text: part }) => commonWords.has(part) || findSpelling(part, 'none') !== null) &&
      !isTrade(parts.map(({ text }) => text));
    if (cut) {
      const whole = parts.map(({ text }) => text).join('');
      read.push({ ...lexeme, text: whole, end: parts.at(-1)!.end, cut: true });
      i = end - 1;
      continue;
    }
    read.push(lexeme);
    depth += lexeme.kind === 'open' ? 1 : lexeme.kind === 'close' ? -1 : 0;
    if (depth > 0) shown = true;
    else if (/^(?:open|is|hint)$/.test(lexeme.kind) || /^(?:as|in|like)$/.test(lexeme.text)) shown = true;
    else if (lexeme.kind === 'close' || (lexeme.kind === 'word' && !/^(?:and|or|yes|no)$/.test(lexeme.text)))
      shown = lexeme.kind === 'close';
  }
  return read;
}

/** Returns the name between two slashes, unless the slashes only divide a list. `c/k/` has a sound, `sh/ch/th` has none. */
function soundAt(text: string, at: number): string | null {
  slashed.lastIndex = at;
  const name = slashed.exec(text)?.[1];
  const behind = text.slice(at + (name?.length ?? 0) + 2);
  // "c/k/-ck" is a list.
  if (name === undefined || /^(?:[\p{L}\p{N}]|[-–]\p{L})/u.test(behind)) return null;
  const plain = name.toLowerCase();
  return soundsByName.has(plain) || /^\p{L}+$/u.test(plain) ? plain : null;
}

/** Abbreviations in capitals that plans use in their columns, with the full words. */
const initials: Readonly<Record<string, string>> = {
  SV: 'short vowel',
  LV: 'long vowel',
  SVs: 'short vowels',
  LVs: 'long vowels',
  VT: 'vowel team',
  VTs: 'vowel teams',
  VD: 'vowel digraph',
  CD: 'consonant digraph',
  CDs: 'consonant digraphs',
  BL: 'blend',
  BLs: 'blends',
  RCV: 'r controlled vowel',
  RCVs: 'r controlled vowels',
  DG: 'digraph',
  DGs: 'digraphs',
  DC: 'double consonant',
  SE: 'silent e',
  CLE: 'consonant le',
};

/**
 * Splits a word with hyphens. A split digraph stays whole. The hyphen of an affix becomes its mark, and any other
 * hyphen divides words.
 */
function splitWord(found: string): Lexeme[] {
  const text = found.replace(/[\u2010-\u2015]/g, '-').replace(/[\u2019\u02bc]/g, "'");
  const short = Object.hasOwn(initials, text) ? initials[text]! : null;
  if (short !== null)
    return short
      .split(' ')
      .map((one) => ({ kind: 'word', text: one, mark: 'none', start: 0, end: text.length }));
  // The number of a part teaches nothing: "Vowel teams II".
  if (/^(?:I{2,3}|IV|VI{1,3})$/.test(text))
    return [{ kind: 'note', text: '', mark: 'none', start: 0, end: text.length }];
  const whole = (kind: Lexeme['kind'], name = '', mark: Mark = 'none') => [
    { kind, text: name, mark, start: 0, end: text.length },
  ];
  if (/^-+$/.test(text)) return whole('is');
  const quoted = /^'(.+)'$/.exec(text);
  if (quoted !== null) return whole('word', quoted[1]!.toLowerCase());
  // a-e, a_e, a-consonant-e, aCe; but "ace" is a word.
  const split = /^([aeiouy])[-_]+(?:(?:c|consonant)[-_]+)?e$/i.exec(text) ?? /^([aeiouy])Ce$/.exec(text);
  if (split !== null) return whole('word', `${split[1]!.toLowerCase()}_e`);
  // A range (f-j) includes letters that it does not show.
  if (/^[a-z]-[a-z]$/i.test(text) && text[0]! < text[2]!) return whole('word', text.toLowerCase());
  // Aa and Bb are a letter with its capital, but ss is two letters.
  if (/^([A-Z])\1$/i.test(text) && text[0] !== text[1]) return whole('word', text[1]);
  const parts: Lexeme[] = [];
  for (const match of text.matchAll(/[^-]+/g)) {
    const before = match.index === 1 && text.startsWith('-');
    const after =
      parts.length === 0 && match.index + match[0].length === text.length - 1 && text.endsWith('-');
    parts.push({
      kind: 'word',
      text:
        before || after
          ? match[0].toLowerCase().replace(/^_+|_+$/g, '')
          : mendWord(match[0].toLowerCase().replace(/^_+|_+$/g, '')),
      mark: before ? 'suffix' : after ? 'prefix' : 'none',
      start: before ? 0 : match.index,
      end: match.index + match[0].length + (after ? 1 : 0),
    });
  }
  return parts;
}
