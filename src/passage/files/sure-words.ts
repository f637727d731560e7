import type { Analyzer } from '../../analyze/index.ts';
import { loadEngine } from '../../host/data/load-engine.ts';
import type { PictureLine, PictureWord } from '../../picture/picture-reading.ts';

/**
 * The sureness from which a word counts as sure. A dictionary word needs less than a piece such as “lcft” or “Iam”.
 * Measured on rendered pages (`tests/accuracy/measure-pictures.ts`): the teacher has to check one right word in a
 * hundred. Seven in eight of the wrong pieces that are not words are marked. A wrong reading that is a dictionary word
 * is hardly ever marked, since the reader is as sure of such words as of right ones.
 */
const SURE = { known: 0.7, other: 0.9 } as const;

/** Marks each word in the lines of a picture as sure or unsure, by the reader's sureness and the dictionary. */
export async function settleSureness<Line extends PictureLine>(lines: readonly Line[]): Promise<Line[]> {
  const engine = await loadEngine();
  return lines.map((line) => ({
    ...line,
    words: line.words.map((word): PictureWord => ({ ...word, isSure: isSure(word, engine) })),
  }));
}

function isSure({ text, sureness }: PictureWord, engine: Analyzer): boolean {
  const parts = text.match(/[\p{L}’']+/gu) ?? [];
  const isKnown = parts.every((part) => isWord(part.replace(/’/g, "'").replace(/^'+|'+$/g, ''), engine));
  return sureness >= (isKnown ? SURE.known : SURE.other);
}

/** Returns whether the engine lists a word or builds it from listed words. */
export function isWord(word: string, engine: Analyzer): boolean {
  return word === '' || /^(dictionary|derived)$/.test(engine.analyze(word).readings[0]?.source ?? '');
}
