import { findSentences } from '../analyze/index.ts';
import type { LessonText } from './lesson-input.ts';

/**
 * The sentences of a passage in its order, each once. Speech keeps the one who said it: `“Row!” said Mr. Falk.` is one. Headings and entries of lists are none, nor is what has no word.
 */
export function passageSentences(passage: LessonText | null): string[] {
  const sentences: string[] = [];
  for (const line of (passage?.text ?? '').split('\n')) {
    if (/^(?:#{1,3}|[-•*]) /.test(line)) continue;
    const ofLine = findSentences(line).map(({ start, end }) => line.slice(start, end).trim());
    sentences.push(...ofLine.filter((text) => /\p{L}/u.test(text)));
  }
  return [...new Set(sentences)];
}
