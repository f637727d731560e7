import { diffArrays } from 'diff';
import type { PictureReading } from '../../src/picture/picture-reading.ts';
import { listWords } from './picture-cases.ts';

/** The comparison of a reading with the words in the picture. */
export interface PictureScore {
  /** Words of the picture that were read with the same letters, in order. */
  readonly right: number;
  /** Words that were read but are not in the picture. */
  readonly added: number;
  /** Each word that was read. */
  readonly read: readonly { readonly word: string; readonly sureness: number; readonly isRight: boolean }[];
  /** Words that were read wrongly: `sells > sclls`. */
  readonly misses: readonly string[];
}

/** Compares a reading with the words of the text, without the signs around them. */
export function scorePicture(reading: PictureReading, words: readonly string[]): PictureScore {
  const given = reading.lines.flatMap((line) =>
    line.words.flatMap(({ text, sureness }) => listWords(text).map((word) => ({ word, sureness }))),
  );
  const changes = diffArrays(
    [...words],
    given.map(({ word }) => word),
  );
  const read: { word: string; sureness: number; isRight: boolean }[] = [];
  const misses: string[] = [];
  changes.forEach(({ value, added, removed }, n) => {
    if (removed) {
      const next = changes[n + 1];
      misses.push(`${value.join(' ')} > ${next?.added ? next.value.join(' ') : '-'}`);
      return;
    }
    for (let k = 0; k < value.length; k++) read.push({ ...given[read.length]!, isRight: !added });
  });
  const right = read.filter(({ isRight }) => isRight).length;
  return { right, added: read.length - right, read, misses };
}
