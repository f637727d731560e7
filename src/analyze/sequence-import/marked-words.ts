import { commonWords } from './common-words.ts';
import type { LaidStep } from './layout.ts';
import { readWords } from './read-words.ts';

const word = "\\p{L}[\\p{L}'’]*";
// Each divider in one way only: else a long list without its end takes for ever.
const list = `${word}(?:(?:\\s*[,/&]\\s*|\\s+)${word})*`;

/** Brackets that hold nothing but words. */
const marks: RegExp[] = [
  [String.raw`\[`, String.raw`\]`],
  [String.raw`\{`, String.raw`\}`],
  ['<', '>'],
].map(([open, close]) => new RegExp(`${open}\\s*(?<list>${list})\\s*${close}`, 'giu'));
// Round ones hold examples, unless they are set apart and have several words: "sh, ch; (they, have)".
marks.push(new RegExp(`(?<=[;.,:–—]\\s*)\\(\\s*(?<list>${word}\\s*,\\s*${list})\\s*\\)`, 'giu'));

/** On so many lines a plan has such a list at least, and so large a part of their words is common. */
const LISTS = 4;
const COMMON = 0.7;

/**
 * How a plan marks its by-sight words, where it has them in brackets of one kind on line after line: `sh; [they, have]`.
 * Null where it does not; examples in brackets are seldom common words.
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

/** A text cut at its lists of by-sight words. */
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
