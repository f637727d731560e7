import type { Cut, Word } from './types.ts';

/** Returns a cut of the words from `start` to before `end`, by their characters in the sentence. */
export function cutOf(words: readonly Word[], start: number, end: number, put = ''): Cut {
  return { start: words[start]!.start, end: words[end - 1]!.end, put };
}

/**
 * Returns the sentence with a cut made. Corrects the blanks, the commas, the capital at the beginning, and “a” or “an”
 * before the gap.
 */
export function makeCut(sentence: string, cut: Cut, takesAn: (word: string) => boolean): string {
  const before = sentence.slice(0, cut.start);
  const after = sentence.slice(cut.end);
  const isFirst = /^[\s"“]*$/.test(before);
  let text: string;
  if (cut.put === '') {
    const left = before.trimEnd();
    const right = after.trimStart();
    const glue =
      left === '' || /[“"([]$/.test(before) || /^[.,;:!?…)\]”]/.test(right) || right === '' ? '' : ' ';
    text = left + glue + right;
  } else {
    text = /^\./.test(cut.put) ? before.trimEnd() + cut.put + after : before + cut.put + after;
  }
  if (isFirst) text = text.replace(/\p{L}/u, (letter) => letter.toUpperCase());
  return correctArticleAt(text, before.trimEnd().length, takesAn);
}

/** Corrects “a” or “an” before `end` to fit the next word. Returns the same text if there is no article before `end`. */
function correctArticleAt(text: string, end: number, takesAn: (word: string) => boolean): string {
  const article = /(?<![\p{L}'’-])(an?)$/iu.exec(text.slice(0, end))?.[1];
  const next = /^\s+([\p{L}]+)/u.exec(text.slice(end))?.[1];
  if (article === undefined || next === undefined) return text;
  const a = article.charAt(0);
  return text.slice(0, end - article.length) + (takesAn(next.toLowerCase()) ? `${a}n` : a) + text.slice(end);
}
