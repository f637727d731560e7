import { readdirSync, readFileSync } from 'node:fs';
import { degrees, PDFDocument, type PDFFont, type PDFPage, StandardFonts } from 'pdf-lib';

/** A PDF file and the text that is read from it. */
export interface PdfLayout {
  readonly name: string;
  readonly make: () => Promise<Uint8Array>;
  /** The words in reading order, in the form that `wordsOf` returns. */
  readonly words: readonly string[];
}

const folder = new URL('../../profiles/texts/', import.meta.url);

/** Returns a few hundred words of paragraphs from the texts of the package. Each `n` gives other texts. */
export function storyParagraphs(n: number): string[] {
  const files = readdirSync(folder).filter((file) => file.endsWith('.txt'));
  return [0, 1, 2].flatMap((more) =>
    readFileSync(new URL(files[(n * 3 + more) % files.length]!, folder), 'utf8')
      .replace(/^[\s\S]*?\n\n/, '')
      .split(/\n+/)
      .map((line) => line.trim())
      .filter((line) => line !== ''),
  );
}

/** Returns the words of a text in lower case. Punctuation between words does not count. */
export function wordsOf(text: string): string[] {
  return (text.toLowerCase().match(/[\p{L}\p{N}]+(?:[’'‐-][\p{L}\p{N}]+)*/gu) ?? []).map((word) =>
    word.replaceAll('’', "'").replaceAll('‐', '-'),
  );
}

interface Setting {
  readonly font?: StandardFonts;
  readonly size?: number;
  readonly columns?: number;
  /** The order in which the lines of columns are drawn. */
  readonly order?: 'columns' | 'rows';
  /** The unit of text that is drawn at a time. */
  readonly pieces?: 'line' | 'word' | 'letter';
  readonly justified?: boolean;
  readonly hyphens?: boolean;
  /** The degrees by which the page is rotated when shown. The text is upright as shown. */
  readonly shown?: 0 | 90 | 180 | 270;
  /** Whether the text runs up the page without a rotation of the page. */
  readonly sideways?: boolean;
  readonly heads?: boolean;
  readonly contents?: 'dots' | 'apart';
  readonly stamp?: boolean;
  readonly indent?: boolean;
}

const LAYOUTS: Readonly<Record<string, Setting>> = {
  'Times in one column': {},
  'Helvetica, large': { font: StandardFonts.Helvetica, size: 16 },
  'a typewriter': { font: StandardFonts.Courier, size: 10 },
  'indented paragraphs': { indent: true },
  'divided words': { hyphens: true },
  'divided words in narrow columns': { hyphens: true, columns: 2, justified: true, size: 10 },
  'stretched lines': { justified: true, pieces: 'word' },
  'words drawn one by one': { pieces: 'word' },
  'letters drawn one by one': { pieces: 'letter' },
  'two columns': { columns: 2, size: 10 },
  'two columns, drawn by rows': { columns: 2, size: 10, order: 'rows' },
  'three columns': { columns: 3, size: 9 },
  'three columns, drawn by rows': { columns: 3, size: 8, order: 'rows' },
  'shown turned to the right': { shown: 90 },
  'shown upside down': { shown: 180, hyphens: true },
  'shown turned to the left': { shown: 270, columns: 2, size: 10 },
  'text up the page': { sideways: true },
  'running heads and numbers': { heads: true, hyphens: true },
  'a list of contents with dots': { contents: 'dots', heads: true },
  'a list of contents, and a stamp': { contents: 'apart', stamp: true },
};

/** Twenty files made by `pdf-lib`. */
export const pdfLayouts: readonly PdfLayout[] = Object.entries(LAYOUTS).map(([name, setting], n) => {
  const paragraphs = storyParagraphs(n);
  return { name, make: () => setPdf(paragraphs, setting), words: wordsOf(paragraphs.join('\n')) };
});

/** The width and height of a page in reading position. */
const WIDE = 420;
const HIGH = 595;
const MARGIN = 50;

async function setPdf(paragraphs: readonly string[], setting: Setting): Promise<Uint8Array> {
  const { size = 12, columns = 1, order = 'columns', hyphens = false, indent = false } = setting;
  const pdf = await PDFDocument.create();
  const font = await pdf.embedFont(setting.font ?? StandardFonts.TimesRoman);
  const gutter = 24;
  const width = (WIDE - 2 * MARGIN - (columns - 1) * gutter) / columns;
  const perColumn = Math.floor((HIGH - 2 * MARGIN) / (size * 1.3));
  if (setting.contents) addContents(newPage(pdf, setting), font, setting);
  const lines = paragraphs.flatMap((text) => {
    const first = indent ? size * 1.5 : 0;
    const broken = breakLines(plain(text), font, size, width, first, hyphens);
    return broken.map((line, n) => ({ line, first: n === 0 ? first : 0, isLast: n === broken.length - 1 }));
  });
  for (let at = 0; at < lines.length; at += perColumn * columns) {
    const page = newPage(pdf, setting);
    const drawn = lines.slice(at, at + perColumn * columns).map((line, n) => ({
      ...line,
      row: n % perColumn,
      x: MARGIN + Math.floor(n / perColumn) * (width + gutter) + line.first,
    }));
    if (order === 'rows') drawn.sort((one, other) => one.row - other.row || one.x - other.x);
    for (const { line, row, x, first, isLast } of drawn) {
      const room = setting.justified && !isLast ? width - first : 0;
      drawLine(page, line, x, HIGH - MARGIN - (row + 1) * size * 1.3, font, size, room, setting);
    }
    if (setting.heads) {
      const number = pdf.getPageCount();
      draw(page, 'The Tarn Quay Post', 150, HIGH - 24, font, 9, setting);
      draw(page, number % 2 === 0 ? `${number}` : `Page ${number} of 9`, 200, 20, font, 9, setting);
    }
    if (setting.stamp)
      page.drawText('DRAFT', { x: 120, y: 200, size: 60, font, rotate: degrees(45), opacity: 0.2 });
  }
  return pdf.save();
}

function addContents(page: PDFPage, font: PDFFont, setting: Setting): void {
  draw(page, 'Contents', MARGIN, HIGH - 70, font, 18, setting);
  ['A Bell in the Fog', 'The Cow Who Came to Town and Would Not Go', 'Sixty Gulls', 'Index'].forEach(
    (title, n) => {
      const y = HIGH - 110 - n * 18;
      if (setting.contents === 'dots')
        draw(page, `${title} ${'. '.repeat(12)}${n * 7 + 3}`, MARGIN, y, font, 11, setting);
      else {
        draw(page, title, MARGIN, y, font, 11, setting);
        draw(page, `${n * 7 + 3}`, WIDE - MARGIN - 12, y, font, 11, setting);
      }
    },
  );
}

function newPage(pdf: PDFDocument, { shown = 0, sideways = false }: Setting): PDFPage {
  const isAcross = shown === 90 || shown === 270 || sideways;
  const page = pdf.addPage(isAcross ? [HIGH, WIDE] : [WIDE, HIGH]);
  page.setRotation(degrees(shown));
  return page;
}

/** Draws text at a place of the page in reading position. */
function draw(
  page: PDFPage,
  text: string,
  x: number,
  y: number,
  font: PDFFont,
  size: number,
  setting: Setting,
): void {
  const { shown = 0, sideways = false } = setting;
  const turned = shown || (sideways ? 90 : 0);
  const [px, py] =
    turned === 90
      ? [HIGH - y, x]
      : turned === 180
        ? [WIDE - x, HIGH - y]
        : turned === 270
          ? [y, WIDE - x]
          : [x, y];
  page.drawText(text, { x: px!, y: py!, size, font, rotate: degrees(turned) });
}

function drawLine(
  page: PDFPage,
  line: string,
  x: number,
  y: number,
  font: PDFFont,
  size: number,
  room: number,
  setting: Setting,
): void {
  const width = font.widthOfTextAtSize(line, size);
  const blanks = line.split(' ').length - 1;
  const more = room > width && blanks > 0 ? (room - width) / blanks : 0;
  const pieces =
    setting.pieces === 'letter'
      ? [...line]
      : setting.pieces === 'word' || more > 0
        ? line.split(/(?<= )/)
        : [line];
  let at = x;
  for (const piece of pieces) {
    if (piece.trim() !== '') draw(page, piece.trimEnd(), at, y, font, size, setting);
    at += font.widthOfTextAtSize(piece, size) + (piece.endsWith(' ') ? more : 0);
  }
}

/** Replaces characters that the standard fonts do not have. */
function plain(text: string): string {
  return text.replace(/[‘’]/g, "'").replace(/[“”]/g, '"').replaceAll('—', '-').replaceAll('…', '...');
}

function breakLines(
  text: string,
  font: PDFFont,
  size: number,
  width: number,
  indent: number,
  hyphens: boolean,
): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/\s+/)) {
    const room = lines.length === 0 ? width - indent : width;
    const fits = (tried: string): boolean => font.widthOfTextAtSize(tried, size) <= room;
    const longer = line === '' ? word : `${line} ${word}`;
    if (fits(longer)) {
      line = longer;
      continue;
    }
    const head = word.slice(0, Math.ceil(word.length / 2));
    if (hyphens && /^\p{Ll}{6,}[,.]?$/u.test(word) && fits(`${line} ${head}-`)) {
      lines.push(`${line} ${head}-`);
      line = word.slice(head.length);
    } else {
      lines.push(line);
      line = word;
    }
  }
  return [...lines, line];
}
