import { joinWrappedLines } from './join-wrapped-lines.ts';

/**
 * Returns the lines of a plain text or Markdown file with the signs of a passage (`# `, `- `). Underlined headings get
 * these signs too.
 */
export function readPlainText(text: string): string {
  return joinWrappedLines(markUnderlined(text))
    .map((line) => line.replace(/^#{4,6} /, '### ').replace(/^[•*] +/, '- '))
    .filter((line) => /[\p{L}\p{N}]/u.test(line))
    .join('\n');
}

/** Converts Markdown's headings of two lines: “The ferry” above a line of `=` or `-`. */
function markUnderlined(text: string): string {
  return text.replace(
    /(^|\n[^\S\r\n]*\r?\n|^\r?\n)(?=[^\r\n]*\S)([^\r\n]+)\r?\n(={3,}|-{3,})[^\S\r\n]*(?=\r?\n|$)/g,
    (_, before: string, title: string, line: string) =>
      `${before}${line.startsWith('=') ? '#' : '##'} ${title.trim()}\n`,
  );
}
