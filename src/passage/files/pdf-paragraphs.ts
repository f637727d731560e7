import type { PdfJoint, PdfLine, PdfParagraph } from './pdf-text.ts';

/** Lines begin a paragraph if the gap before them exceeds the usual gap by this factor. */
const WIDER = 1.3;
/** The smallest indent of a first line that begins a paragraph, in multiples of its letter size. */
const INDENT = 0.8;
/** A line is a heading if its letters are larger than most by this factor and if it is no longer than `LONGEST_HEADING`. */
const LARGER = 1.12;
const LONGEST_HEADING = 150;
/** Lines are in one column if their starts differ by less than this, in multiples of their letter size. */
const COLUMN = 5;

const ITEM = /^[•▪◦‣·●○■*–—-]\s+(?=\S)/;
/** Matches a line that ends within a word. */
const DIVIDED = /\p{L}[-‐\u00ad]$/u;
const NUMBERED = /^\(?\d{1,2}[.)]\s+\S/;

/**
 * Finds the headings, list entries and paragraphs of a PDF from the positions of its lines. A word that a hyphen
 * divides at the end of a line is joined if that makes a word.
 */
export function findPdfParagraphs(
  lines: readonly PdfLine[],
  isWord: (word: string) => boolean,
): PdfParagraph[] {
  const body = commonSize(lines);
  const usual = usualGap(lines);
  const levels = [
    ...new Set(lines.filter((line) => isHeading(line, body)).map(({ size }) => Math.round(size))),
  ].sort((one, other) => other - one);
  const columns = findColumns(lines);
  const words = wordsWithin(lines);
  const found: OpenParagraph[] = [];
  lines.forEach((line, n) => {
    const before = lines[n - 1];
    const last = found.at(-1);
    if (before && last && continues(before, line, columns, usual)) {
      const joint = findJoint(last.text, line.text, isWord, words);
      last.parts.at(-1)!.joint = joint;
      last.parts.push({ line, joint: 'blank' });
      last.text = join(last.text, line.text, joint);
    } else {
      const parts: OpenParagraph['parts'] = [{ line, joint: 'blank' }];
      if (isHeading(line, body)) {
        const level = Math.min(3, levels.indexOf(Math.round(line.size)) + 1);
        found.push({ kind: 'heading', level, text: line.text, parts });
      } else if (ITEM.test(line.text))
        found.push({ kind: 'item', level: 0, text: line.text.replace(ITEM, ''), parts });
      else found.push({ kind: 'paragraph', level: 0, text: line.text, parts });
    }
  });
  return found.map((line) => ({ ...line, text: line.text.replace(/\u00ad/g, '') }));
}

/** A paragraph that is being put together. */
interface OpenParagraph extends PdfParagraph {
  text: string;
  readonly parts: { readonly line: PdfLine; joint: PdfJoint }[];
}

interface Column {
  readonly left: number;
  readonly right: number;
}

function continues(
  before: PdfLine,
  line: PdfLine,
  columns: ReadonlyMap<PdfLine, Column>,
  usual: number,
): boolean {
  if (Math.abs(before.size - line.size) > 0.1 * before.size) return false;
  if (ITEM.test(line.text) || NUMBERED.test(line.text)) return false;
  const gap = before.y - line.y;
  const isBelow = before.page === line.page && gap > 0;
  if (before.page === line.page && Math.abs(gap) < line.size * 0.3) return false;
  if (DIVIDED.test(before.text) && /^\p{Ll}/u.test(line.text)) return true;
  if (isBelow && gap / line.size > usual * WIDER) return false;
  const startsItem = ITEM.test(before.text) || NUMBERED.test(before.text);
  const left = isBelow ? before.x : columns.get(line)!.left;
  if (!startsItem && line.x > left + INDENT * line.size) return false;
  return hadNoRoom(before, line, columns.get(before)!);
}

/** Tells whether the first word of the next line would have run over the column's edge. */
function hadNoRoom(before: PdfLine, line: PdfLine, { right }: Column): boolean {
  const word = /^\S+/.exec(line.text)![0];
  const width = ((line.right - line.x) * (word.length + 1)) / line.text.length;
  return before.right + width > right - line.size * 0.2;
}

/**
 * Returns how a line continues in the next line. A hyphen at the end of a line is removed if the joined halves make a
 * word, or a word that the text has elsewhere. The hyphen is kept if the text has the hyphenated word elsewhere
 * (well-known), or if both halves are words. The halves of names and rare words are no words, so their hyphen is
 * removed.
 */
function findJoint(
  text: string,
  next: string,
  isWord: (word: string) => boolean,
  words: ReadonlySet<string>,
): PdfJoint {
  if (text.endsWith('\u00ad')) return 'hyphen';
  const divided = /(\p{L}+)[-‐]$/u.exec(text);
  const rest = /^\p{Ll}+/u.exec(next)?.[0];
  if (!divided) return 'blank';
  if (!rest) return /^\p{L}/u.test(next) ? 'none' : 'blank';
  const [, head = ''] = divided;
  if (isWord(head + rest) || words.has((head + rest).toLowerCase())) return 'hyphen';
  if (words.has(`${head}-${rest}`.toLowerCase())) return 'none';
  return isWord(head) && isWord(rest) ? 'none' : 'hyphen';
}

function join(text: string, next: string, joint: PdfJoint): string {
  if (joint === 'blank') return `${text} ${next}`;
  return (joint === 'hyphen' ? text.slice(0, -1) : text) + next;
}

/** Returns the words that are whole within a line, in lower case. Words with a hyphen are included. */
function wordsWithin(lines: readonly PdfLine[]): Set<string> {
  const words = new Set<string>();
  for (const { text } of lines)
    for (const [word] of text.matchAll(/(?<![\p{L}-])\p{L}+(?:[-‐]\p{L}+)*(?![\p{L}‐-])/gu))
      words.add(word.toLowerCase().replaceAll('‐', '-'));
  return words;
}

function isHeading({ text, size }: PdfLine, body: number): boolean {
  return size > body * LARGER && text.length <= LONGEST_HEADING && /\p{L}/u.test(text);
}

/** The size that most letters have. */
function commonSize(lines: readonly PdfLine[]): number {
  const letters = new Map<number, number>();
  for (const { size, text } of lines) {
    const rounded = Math.round(size * 2) / 2;
    letters.set(rounded, (letters.get(rounded) ?? 0) + text.length);
  }
  return [...letters].sort((one, other) => other[1] - one[1])[0]?.[0] ?? 0;
}

/**
 * Returns the usual distance between lines of one paragraph, in multiples of their letter size. A low value of all
 * distances is used, since gaps between paragraphs are larger.
 */
function usualGap(lines: readonly PdfLine[]): number {
  const gaps = lines
    .flatMap((line, n) => {
      const before = lines[n - 1];
      const gap = before?.page === line.page ? (before.y - line.y) / line.size : 0;
      return gap > 0.5 && gap < 4 ? [gap] : [];
    })
    .sort((one, other) => one - other);
  return gaps[Math.floor(gaps.length * 0.3)] ?? 1.2;
}

/**
 * Finds the edges of the column that each line is in. A column is made of the lines of one page and one size that start
 * near each other. A heading may extend over several columns.
 */
function findColumns(lines: readonly PdfLine[]): Map<PdfLine, Column> {
  const columns = new Map<PdfLine, Column>();
  const alike = new Map<string, PdfLine[]>();
  for (const line of lines) {
    const kind = `${line.page} ${Math.round(line.size)}`;
    const known = alike.get(kind);
    if (known) known.push(line);
    else alike.set(kind, [line]);
  }
  for (const own of alike.values()) {
    const byStart = [...own].sort((one, other) => one.x - other.x);
    let column: PdfLine[] = [];
    const end = (): void => {
      const left = Math.min(...column.map(({ x }) => x));
      const right = Math.max(...column.map((line) => line.right));
      for (const line of column) columns.set(line, { left, right });
      column = [];
    };
    for (const line of byStart) {
      if (column.length > 0 && line.x - column.at(-1)!.x > COLUMN * line.size) end();
      column.push(line);
    }
    end();
  }
  return columns;
}
