import { markReading } from '../homographs/mark-reading.ts';
import type { Token } from '../types.ts';
import { cutText } from './cut-text.ts';

/**
 * Cuts a text into words and skipped pieces, as `cutText` does. The key of a homograph is followed by its reading where
 * the context shows the reading (`she read the note` gives read#1).
 */
export function tokenize(text: string): Token[] {
  return cutText(text, markReading);
}
