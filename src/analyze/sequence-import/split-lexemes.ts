import type { PatternId } from '../types.ts';
import { mendWord } from './mend-word.ts';
import { soundsByName } from './sound-names.ts';
import type { Mark } from './spellings.ts';

/**
 * A piece of an item's text. `sound`: what stands between slashes; `break`: what divides items; `is`: a colon,
 * equals sign or dash between a name and what it stands for; the rest of the punctuation says nothing. Those that
 * `notation-rules` makes of several words: `hint` (examples follow), `list` (a list follows), `note` (says nothing
 * about what is taught), `every` (all sounds of the letters before it, or as many as its text says), `meant` (`ids`).
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
  /** Lower case; a split digraph as `a_e`, without the hyphens of an affix. */
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
  '→': 'is',
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
const plain = /w\/(?=\s)/iuy;
const abbreviation = /(?:e\.\s?g\.?|i\.\s?e\.?|ex\.)(?![\p{L}\p{N}])/iuy;
const listMarker = /^\s*(?:\(?\d{1,3}[.)]|\((?:[ivx]{1,5}|[a-h])\)|(?:[ivx]{2,5}|[a-h])\))\s+/;
/** `B3`, `RF.1.3.a`, `2.4`: the number of a line in its own numbering; not `a-e` nor `2 sounds`. */
const lineCode =
  /^\s*\(?(?=[\p{L}.]*\d)(?:(?:[\p{L}]{1,4}|\d{1,3})\.)*(?:[\p{Lu}]{1,3}\d{1,3}[a-z]?|(?<=\.)(?:\d{1,3}[a-z]?|[a-z]))[.):]?\s+(?=\S)/u;

/** Cuts one line of a sequence into lexemes. `ai (rain), a-e /ā/` → ai ( rain ) , a_e /ā/. */
export function splitLexemes(text: string): readonly Lexeme[] {
  const lexemes: Lexeme[] = [];
  const arrows = text.split('→').length - 1;
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
    // One arrow leads to examples, several divide a list.
    const kind = text[at] === '→' && arrows > 1 ? 'break' : singles[text[at]!];
    if (kind !== undefined) {
      add(kind, at + 1, text[at]);
      continue;
    }
    plain.lastIndex = at;
    if (plain.test(text)) {
      at += 2;
      continue;
    }
    abbreviation.lastIndex = at;
    const short = abbreviation.exec(text)?.[0];
    if (short !== undefined) {
      add('hint', at + short.length);
      continue;
    }
    word.lastIndex = at;
    const found = word.exec(text)?.[0];
    if (found === undefined) {
      if (text[at] === '.' && text[at + 1] === ' ') add('break', at + 1);
      else at += 1;
      continue;
    }
    for (const part of splitWord(found)) {
      const { start: _, ...rest } = part;
      // An opening quote belongs to its word.
      const quoted = part.start === 0 && /["“‘<]/.test(text[at - 1] ?? ' ') ? 1 : 0;
      lexemes.push({ ...rest, start: at + part.start - quoted, end: at + part.end });
    }
    at += found.length;
  }
  return lexemes;
}

/** The name between two slashes, where they do not merely divide a list: `c/k/`, but not `sh/ch/th`. */
function soundAt(text: string, at: number): string | null {
  slashed.lastIndex = at;
  const name = slashed.exec(text)?.[1];
  if (name === undefined || /[\p{L}\p{N}]/u.test(text[at + name.length + 2] ?? ' ')) return null;
  const plain = name.toLowerCase();
  return soundsByName.has(plain) || /^\p{L}+$/u.test(plain) ? plain : null;
}

/** A split digraph stays whole, an affix gives its hyphen for a mark, any other hyphen divides words. */
function splitWord(found: string): Lexeme[] {
  const text = found.replace(/[\u2010-\u2015]/g, '-').replace(/[\u2019\u02bc]/g, "'");
  const whole = (kind: Lexeme['kind'], name = '', mark: Mark = 'none') => [
    { kind, text: name, mark, start: 0, end: text.length },
  ];
  if (/^-+$/.test(text)) return whole('is');
  const quoted = /^'(.+)'$/.exec(text);
  if (quoted !== null) return whole('word', quoted[1]!.toLowerCase());
  // a-e, a_e, a-consonant-e, aCe; but "ace" is a word.
  const split = /^([aeiouy])[-_]+(?:(?:c|consonant)[-_]+)?e$/i.exec(text) ?? /^([aeiouy])Ce$/.exec(text);
  if (split !== null) return whole('word', `${split[1]!.toLowerCase()}_e`);
  // A range (f-j) names letters it does not show.
  if (/^[a-z]-[a-z]$/i.test(text) && text[0]! < text[2]!) return whole('word', text.toLowerCase());
  // Aa, Bb: a letter with its capital; but ss is two letters.
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
