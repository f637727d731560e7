import { findSentences } from '../analyze/index.ts';
import type { WordInSentence } from '../contract/page-contract.ts';
import type { WordPlace } from './find-places.ts';
import type { ReadBlock } from './page-text.ts';

/**
 * Returns the sentence that contains a word, as the engine splits sentences. Returns null if the page has changed in
 * the meantime.
 */
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
  // Line breaks in the source are blanks on the page. The length of the text stays the same.
  const shown = text.replace(/\s/g, ' ');
  const span = findSentences(shown).find((one) => one.start <= start && start < one.end)!;
  if (span.end < end) return null;
  return { sentence: shown.slice(span.start, span.end), start: start - span.start, end: end - span.start };
}
