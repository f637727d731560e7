import type { Aligner } from '../../src/analyze/alignment/align.ts';
import { placeSpellings } from '../../src/analyze/build/place-spellings.ts';

/** One word of NETtalk, with a sound symbol for each letter. `-` means that the letter belongs to its neighbour. */
export interface NettalkWord {
  readonly word: string;
  /** The ARPAbet sounds of each letter. Empty for a silent letter. */
  readonly sounds: readonly (readonly string[])[];
}

export interface NettalkScore {
  readonly words: number;
  readonly aligned: number;
  readonly letters: number;
  readonly lettersRight: number;
  readonly wordsRight: number;
  readonly wrong: readonly string[];
}

/** Reads the corpus and the key to its symbols (tab-separated with a header line). */
export function readNettalk(corpus: string, key: string): NettalkWord[] {
  const arpabet = new Map(
    rows(key).map(([symbol, sounds]) => [symbol!, sounds === '(none)' ? [] : sounds!.split(' ')]),
  );
  return rows(corpus).map(([word = '', phonemes = '', stress = '']) => {
    const symbols = normalise(word, [...phonemes]);
    const sounds = symbols.map((symbol, i) => {
      const found = symbol === 'AX' ? ['AX'] : (arpabet.get(symbol) ?? [symbol]);
      return found.map((sound) => (sound === 'IH' && stress[i] === '0' ? 'IX' : sound));
    });
    return { word, sounds };
  });
}

/**
 * Removes two differences that are only a matter of notation. A syllabic l, m or n keeps its weak vowel on the vowel
 * letter before it (medal). After a ti or ci pronounced SH, the weak vowel is on the second vowel letter (ocean).
 */
function normalise(word: string, symbols: string[]): string[] {
  const out = [...symbols];
  for (let i = 1; i < out.length; i++) {
    const plain = { L: 'l', M: 'm', N: 'n' }[out[i]!];
    if (plain && out[i - 1] === '-' && /[aeiouy]/.test(word[i - 1]!)) {
      out[i - 1] = 'AX';
      out[i] = plain;
    }
    if (out[i] === '-' && out[i - 1] === 'x' && /[SCZJ]/.test(out[i - 2] ?? '') && /[aeiou]/.test(word[i]!)) {
      out[i - 1] = '-';
      out[i] = 'x';
    }
  }
  return out;
}

/** Counts how often the aligner, given NETtalk's own pronunciation, assigns each sound to the same letters as NETtalk. */
export function scoreNettalk(words: readonly NettalkWord[], aligner: Aligner): NettalkScore {
  let [aligned, letters, lettersRight, wordsRight] = [0, 0, 0, 0];
  const wrong: string[] = [];
  for (const { word, sounds } of words) {
    const flat = sounds.flat();
    const found = /^[a-z]+$/.test(word) ? aligner.align(word, flat) : null;
    const starts = found && placeSpellings(word, found.units);
    if (!found || !starts) continue;
    aligned++;
    letters += word.length;
    let right = 0;
    for (const [i, unit] of found.units.entries()) {
      const theirs = sounds
        .slice(starts[i], starts[i + 1])
        .flat()
        .join('.');
      if (theirs === (unit.sound === '-' ? '' : unit.sound)) right += starts[i + 1]! - starts[i]!;
    }
    lettersRight += right;
    if (right === word.length) wordsRight++;
    else
      wrong.push(
        `${word}: ${found.units.map((unit) => `${unit.letters}:${unit.sound}`).join(' ')} | ${describe(word, sounds)}`,
      );
  }
  return { words: words.length, aligned, letters, lettersRight, wordsRight, wrong };
}

function describe(word: string, sounds: NettalkWord['sounds']): string {
  return [...word].map((letter, i) => `${letter}:${sounds[i]!.join('.') || '-'}`).join(' ');
}

function rows(text: string): string[][] {
  const [, ...lines] = text.trimEnd().split('\n');
  return lines.map((line) => line.split('\t'));
}
