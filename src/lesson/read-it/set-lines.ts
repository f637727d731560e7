/**
 * A line of a passage in large print. `words` is the number of words read up to the end of the line; null for a
 * heading, which is not counted.
 */
export interface SetLine {
  readonly text: string;
  readonly words: number | null;
}

/** The number of letters that fit on a line at the large size, with room for the count. */
const LONGEST = 42;

/** Counts words as the desk does: o’clock is one word, and lighthouse-keeper is one word. */
export function countWords(text: string): number {
  return text.match(/[\p{L}\p{N}]+(?:['’-][\p{L}\p{N}]+)*/gu)?.length ?? 0;
}

/**
 * Sets a passage in lines short enough for large print, each with a running count of words at its end. A paragraph that
 * follows another begins with a wide space. Headings have no count, and neither they nor the marks of list entries are
 * counted.
 */
export function setLines(text: string): SetLine[] {
  const lines: SetLine[] = [];
  let words = 0;
  let isFirst = true;
  for (const paragraph of text.split('\n').map((line) => line.replace(/\s+/g, ' ').trim())) {
    const heading = /^#{1,3} (?<title>.+)$/.exec(paragraph)?.groups?.title;
    if (heading !== undefined) {
      lines.push({ text: heading, words: null });
      isFirst = true;
      continue;
    }
    const plain = paragraph.replace(/^[-•*] /, '');
    if (!/[\p{L}\p{N}]/u.test(plain)) continue;
    for (const line of breakLine(isFirst ? plain : `\u2003${plain}`)) {
      words += countWords(line);
      lines.push({ text: line, words });
    }
    isFirst = false;
  }
  return lines;
}

function breakLine(text: string): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    if (line !== '' && line.length + 1 + word.length > LONGEST) {
      lines.push(line);
      line = word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  if (line !== '') lines.push(line);
  return lines;
}
