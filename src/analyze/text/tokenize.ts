import { markReading } from '../homographs/mark-reading.ts';
import type { Token } from '../types.ts';
import { cutText } from './cut-text.ts';

/**
 * A text cut into words and pieces that are left out, as `cutText` does, with the reading of each homograph behind its
 * key where the context tells it (`she read the note` gives read#1).
 */
export function tokenize(text: string): Token[] {
  return cutText(text, markReading);
}
