import type { WordKey } from '../types.ts';

const MARK = '#';
const MARKED = /^(.*)#(\d)$/su;

/** The key of a homograph whose reading is chosen: `read` and 1 give `read#1`. No word has the mark in it. */
export function keyOfReading(word: WordKey, reading: number): WordKey {
  return `${word}${MARK}${reading}`;
}

/** The word as it is shown, and its chosen reading; null where none is (`Duke`, `read`). */
export function splitKey(key: WordKey): { word: string; reading: number | null } {
  const marked = key.includes(MARK) ? MARKED.exec(key) : null;
  return marked ? { word: marked[1]!, reading: Number(marked[2]) } : { word: key, reading: null };
}
