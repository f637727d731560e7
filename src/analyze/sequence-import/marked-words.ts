import { commonWords } from './common-words.ts';
import type { LaidStep } from './layout.ts';
import { readWords } from './read-words.ts';

const word = "\\p{L}[\\p{L}'’]*";
// Each divider can match in only one way. Otherwise a long list without an end would take forever.
const list = `${word}(?:(?:\\s*[,/&]\\s*|\\s+)${word})*`;

/** Brackets that contain nothing but words. */
const marks: RegExp[] = [
  [String.raw`\[`, String.raw`\]`],
  [String.raw`\{`, String.raw`\}`],
  ['<', '>'],
].map(([open, close]) => new RegExp(`${open}\\s*(?<list>${list})\\s*${close}`, 'giu'));
// Round brackets contain examples, unless they are set apart and have several words: "sh, ch; (they, have)".
marks.push(new RegExp(`(?<=[;.,:–—]\\s*)\\(\\s*(?<list>${word}\\s*,\\s*${list})\\s*\\)`, 'giu'));

/**
 * The fewest lines with a list in brackets that a plan must have. `COMMON` is the smallest share of common words in
 * these lists.
 */
const LISTS = 4;
const COMMON = 0.7;

/**
 * Returns the pattern of the brackets in which a plan lists its by-sight words: `sh; [they, have]`. The brackets must
 * be of one kind and contain common words on many lines, because examples in brackets are seldom common words. Returns
 * null for other plans.
 */
export function findWordMark(steps: readonly LaidStep[]): RegExp | null {
  const texts = steps.flatMap(({ cells }) =>
    cells.filter(({ kind }) => kind === 'patterns' || kind === 'title').map(({ text }) => text),
  );
  return (
    marks.find((mark) => {
      const lists = texts.flatMap((text) =>
        [...text.matchAll(mark)].map(({ groups }) => readWords(groups!.list!)),
      );
      const words = lists.flat();
      const common = words.filter((one) => commonWords.has(one) || commonWords.has(one.toLowerCase()));
      return lists.length >= LISTS && common.length >= words.length * COMMON;
    }) ?? null
  );
}

/** Cuts a text at its lists of by-sight words. */
export function cutMarkedWords(
  text: string,
  mark: RegExp,
): readonly { readonly text: string; readonly words: boolean }[] {
  const pieces: { text: string; words: boolean }[] = [];
  let after = 0;
  for (const found of text.matchAll(mark)) {
    pieces.push(
      { text: text.slice(after, found.index), words: false },
      { text: found.groups!.list!.replace(/,?\s+and\s+/g, ', '), words: true },
    );
    after = found.index + found[0].length;
  }
  pieces.push({ text: text.slice(after), words: false });
  return pieces.filter((piece) => /[\p{L}\p{N}]/u.test(piece.text));
}
