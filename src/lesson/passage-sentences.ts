import type { LessonText } from './lesson-input.ts';

const segmenter = new Intl.Segmenter('en', { granularity: 'sentence' });
const TITLE = /\b(?:Mr|Mrs|Ms|Dr|St|Capt)\.$/;

/**
 * The sentences of a passage in its order, each once (as Unicode UAX #29 cuts them). A name keeps its title and speech the one
 * who said it: `“Row!” said Mr. Falk.` is one. Headings and entries of lists are none, nor is what has no word.
 */
export function passageSentences(passage: LessonText | null): string[] {
  const sentences: string[] = [];
  for (const line of (passage?.text ?? '').split('\n')) {
    if (/^(?:#{1,3}|[-•*]) /.test(line)) continue;
    const ofLine: string[] = [];
    for (const { segment } of segmenter.segment(line)) {
      const text = segment.trim();
      const last = ofLine.at(-1);
      if (last !== undefined && (TITLE.test(last) || /^\p{Ll}/u.test(text)))
        ofLine[ofLine.length - 1] += ` ${text}`;
      else if (text !== '') ofLine.push(text);
    }
    sentences.push(...ofLine.filter((text) => /\p{L}/u.test(text)));
  }
  return [...new Set(sentences)];
}
