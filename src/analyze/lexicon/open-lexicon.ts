import type { Usage } from '../types.ts';
import {
  AFFIXED,
  BLOCK,
  COMPOUND,
  DERIVED,
  HOMOGRAPH,
  LONG,
  NAME,
  RARE_UNITS,
  type TableHeader,
} from './table-format.ts';
import type { AffixForm, Correspondence, MadeBy, ReadingRecord, TableWord } from './word-record.ts';

/** The table of known words. */
export interface Lexicon {
  /** Number of words. */
  readonly size: number;
  /** Returns the entry of a word in lower case with straight apostrophes, or null. */
  find(word: string): TableWord | null;
  /**
   * Returns the facts about a British pronunciation that no rule can give: the units of the word, or the place of each
   * weak and full er. Returns null if there are no such facts.
   */
  findBritish(word: string): string | null;
}

/**
 * Opens the table made by `npm run data`. Nothing is decoded before it is needed, so opening takes well under a
 * millisecond. Throws if the bytes are not such a table.
 */
export function openLexicon(bytes: Uint8Array): Lexicon {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes.length < 8) throw new Error('The word table is empty: build it again with `npm run data`.');
  const headerLength = view.getUint32(0, true);
  const size = view.getUint32(4, true);
  const header = readHeader(bytes.subarray(8, 8 + headerLength));
  const offsets = 8 + headerLength;
  const blocks = Math.ceil(size / BLOCK);
  const start = offsets + 4 * blocks;
  const units: Correspondence[] = [];
  const codes: (readonly Correspondence[])[] = [];
  const affixes = header.affixes.map(([letters, sound, kind]): AffixForm => ({ letters, sound, kind }));
  /** Returns the units of a code. They are created for the first word that has the code. */
  function unitsOf(code: number): readonly Correspondence[] {
    codes[code] ??= header.codes[code]!.map((place) => {
      const [letters, sound] = header.units[place]!;
      units[place] ??= { letters, sound };
      return units[place];
    });
    return codes[code];
  }
  const blockAt = (block: number): number => start + view.getUint32(offsets + 4 * block, true);

  function find(word: string): TableWord | null {
    const wanted = asciiBytes(word);
    if (wanted === null || size === 0) return null;
    let low = 0;
    let high = blocks - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (compareFirst(bytes, blockAt(middle), wanted) <= 0) low = middle;
      else high = middle - 1;
    }
    const body = findInBlock(blockAt(low), low === blocks - 1 ? size - low * BLOCK : BLOCK, wanted);
    return body === null ? null : decode(body.at, body.end, isCommon(low * BLOCK + body.place));
  }

  /**
   * `same` is the number of letters that the previous word shares with the wanted one. The block is sorted, so no word
   * has to be rebuilt.
   */
  function findInBlock(
    from: number,
    count: number,
    wanted: Uint8Array,
  ): { at: number; end: number; place: number } | null {
    let at = from;
    let same = 0;
    for (let i = 0; i < count; i++) {
      const shared = bytes[at]! >> 4;
      let rest = bytes[at]! & LONG;
      at++;
      if (rest === LONG) rest = bytes[at++]!;
      const body = at + rest;
      const bodyLength = bytes[body]!;
      // Four bits hold at most 15, so 15 can also mean a longer shared beginning. The remaining letters then decide.
      if (shared === LONG && same > LONG) same = LONG;
      if (shared < same) return null;
      if (shared === same) {
        let k = 0;
        while (k < rest && same + k < wanted.length && bytes[at + k] === wanted[same + k]) k++;
        if (k === rest && same + k === wanted.length)
          return { at: body + 1, end: body + 1 + bodyLength, place: i };
        if (k < rest && (same + k === wanted.length || bytes[at + k]! > wanted[same + k]!)) return null;
        same += k;
      }
      at = body + 1 + bodyLength;
    }
    return null;
  }

  const britishAt = bytes.length - (header.british ?? 0);
  const marks = britishAt - Math.ceil(size / 8);
  const isCommon = (place: number): boolean => (bytes[marks + (place >> 3)]! & (1 << (place & 7))) !== 0;

  function decode(from: number, end: number, common: boolean): TableWord {
    const readings: ReadingRecord[] = [];
    let at = from;
    let homograph = false;
    let usage: Usage = common ? 'common' : 'rare';
    while (at < end) {
      const tag = bytes[at++]!;
      const kind = tag & 3;
      const number = tag >> 4;
      if (tag & HOMOGRAPH) homograph = true;
      if (tag & NAME) usage = 'name';
      if (kind === AFFIXED) {
        readings.push({ kind: 'affixed', madeBy: madeFrom(affixes[bytes[at++]!]!, number) });
      } else if (kind === COMPOUND) {
        readings.push({ kind: 'compound', cut: bytes[at++]!, left: number >> 2, right: number & 3 });
      } else {
        let madeBy = null;
        if (kind === DERIVED) {
          const affix = affixes[bytes[at++]!]!;
          madeBy = madeFrom(affix, bytes[at++]!);
        }
        const spelt: Correspondence[] = [];
        const length = number === LONG ? bytes[at++]! : number;
        while (spelt.length < length) {
          let code = bytes[at++]!;
          if (code >= RARE_UNITS) code = RARE_UNITS + ((code - RARE_UNITS) << 8) + bytes[at++]!;
          spelt.push(...unitsOf(code));
        }
        readings.push({ kind: 'whole', units: spelt, madeBy });
      }
    }
    return { readings, homograph, usage };
  }

  /** Finds a line by binary search. From any byte, the line starts after the previous line end. */
  function findBritish(word: string): string | null {
    let low = britishAt;
    let high = bytes.length;
    while (low < high) {
      let from = (low + high) >> 1;
      while (from > low && bytes[from - 1] !== LINE_END) from--;
      let at = from;
      let k = 0;
      while (bytes[at] !== TAB && k < word.length && bytes[at] === word.charCodeAt(k)) {
        at++;
        k++;
      }
      let end = at;
      while (bytes[end] !== LINE_END) end++;
      if (bytes[at] === TAB && k === word.length) return decodeText(bytes.subarray(at + 1, end));
      // A word comes before the longer words that begin with it.
      if (bytes[at] === TAB || (k < word.length && bytes[at]! < word.charCodeAt(k))) low = end + 1;
      else high = from;
    }
    return null;
  }

  return { size, find, findBritish };
}

function madeFrom(affix: AffixForm, base: number): MadeBy {
  return { affix, stem: (base >> 1) & 3, reading: base & 1, lessened: base >= 8 };
}

const TAB = 9;
const LINE_END = 10;

/**
 * The number of bytes that one call converts to text. The bytes are passed as a list and are not spread. Converting one
 * character at a time takes as long as the rest of opening the table.
 */
const AT_ONCE = 4096;

/** Converts plain bytes to text, one character for each byte. */
export function decodeText(bytes: Uint8Array): string {
  let text = '';
  for (let at = 0; at < bytes.length; at += AT_ONCE)
    text += String.fromCharCode.apply(null, bytes.subarray(at, at + AT_ONCE) as unknown as number[]);
  return text;
}

function readHeader(bytes: Uint8Array): TableHeader {
  try {
    return JSON.parse(decodeText(bytes)) as TableHeader;
  } catch {
    throw new Error('The word table cannot be read: build it again with `npm run data`.');
  }
}

/**
 * Returns the bytes of a word. Returns null if the word is longer than any in the table or has other characters than
 * plain letters.
 */
function asciiBytes(word: string): Uint8Array | null {
  if (word.length === 0 || word.length > 60) return null;
  const bytes = new Uint8Array(word.length);
  for (let i = 0; i < word.length; i++) {
    const code = word.charCodeAt(i);
    if (code > 122) return null;
    bytes[i] = code;
  }
  return bytes;
}

/** Compares the first word of a block with the wanted word. */
function compareFirst(bytes: Uint8Array, at: number, wanted: Uint8Array): number {
  let start = at + 1;
  let length = bytes[at]! & LONG;
  if (length === LONG) length = bytes[start++]!;
  const common = Math.min(length, wanted.length);
  for (let k = 0; k < common; k++) {
    const difference = bytes[start + k]! - wanted[k]!;
    if (difference !== 0) return difference;
  }
  return length - wanted.length;
}
