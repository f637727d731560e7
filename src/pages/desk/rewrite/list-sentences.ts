import { findSentences } from '../../../passage/find-sentences.ts';

/** A sentence of a passage, with its place in the whole text and its neighbouring sentences. */
export interface PlacedSentence {
  readonly from: number;
  readonly to: number;
  readonly text: string;
  readonly before: string;
  readonly after: string;
}

/** Lists the sentences of a passage that may be rewritten: all sentences except headings. */
export function listSentences(text: string): PlacedSentence[] {
  const placed: { from: number; to: number; text: string; isHeading: boolean }[] = [];
  let lineStart = 0;
  for (const line of text.split('\n')) {
    const isHeading = /^#{1,3} /.test(line);
    const sign = /^- /.test(line) ? 2 : 0;
    for (const { start, end } of findSentences(line.slice(sign))) {
      const from = lineStart + sign + start;
      const to = lineStart + sign + end;
      placed.push({ from, to, text: text.slice(from, to), isHeading });
    }
    lineStart += line.length + 1;
  }
  return placed.flatMap(({ isHeading, ...sentence }, i) =>
    isHeading || sentence.text.trim() === ''
      ? []
      : [{ ...sentence, before: placed[i - 1]?.text ?? '', after: placed[i + 1]?.text ?? '' }],
  );
}
