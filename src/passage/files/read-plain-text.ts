import { joinWrappedLines } from './join-wrapped-lines.ts';

/** The lines of a plain text or Markdown file, in the signs of a passage: underlined headings get theirs too. */
export function readPlainText(text: string): string {
  return joinWrappedLines(markUnderlined(text))
    .map((line) => line.replace(/^#{4,6} /, '### ').replace(/^[•*] +/, '- '))
    .filter((line) => /[\p{L}\p{N}]/u.test(line))
    .join('\n');
}

/** Markdown's headings of two lines: “The ferry” over a line of = or -. */
function markUnderlined(text: string): string {
  return text.replace(
    /(^|\n[^\S\r\n]*\r?\n|^\r?\n)(?=[^\r\n]*\S)([^\r\n]+)\r?\n(={3,}|-{3,})[^\S\r\n]*(?=\r?\n|$)/g,
    (_, before: string, title: string, line: string) =>
      `${before}${line.startsWith('=') ? '#' : '##'} ${title.trim()}\n`,
  );
}
