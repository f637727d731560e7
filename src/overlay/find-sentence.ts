import type { WordPlace } from './find-places.ts';
import type { ReadBlock } from './page-text.ts';

/** A word in its sentence; offsets are UTF-16 units into the sentence. */
export interface WordInSentence {
  readonly sentence: string;
  readonly start: number;
  readonly end: number;
}

const sentences = new Intl.Segmenter('en', { granularity: 'sentence' });

/** The sentence a word stands in, as Unicode (UAX #29) cuts them; null when the page has changed since. */
export function findSentence({ nodes }: ReadBlock, { ranges }: WordPlace): WordInSentence | null {
  const first = ranges[0];
  const last = ranges.at(-1);
  if (!first || !last) return null;
  let text = '';
  let start = -1;
  let end = -1;
  for (const node of nodes) {
    if (node === first.startContainer) start = text.length + first.startOffset;
    if (node === last.endContainer) end = text.length + last.endOffset;
    text += node.data;
  }
  if (start < 0 || end <= start || end > text.length) return null;
  // Line breaks of the source are blanks on the page; lengths stay the same.
  const { segment, index } = sentences.segment(text.replace(/\s/g, ' ')).containing(start)!;
  if (index + segment.length < end) return null;
  return { sentence: segment, start: start - index, end: end - index };
}
