import {
  AlignmentType,
  Document,
  FootnoteReferenceRun,
  HeadingLevel,
  ImageRun,
  Packer,
  Paragraph,
  TextRun,
} from 'docx';
import { strToU8, zipSync } from 'fflate';
import { PDFDocument, type PDFFont, PDFHexString, PDFName, type PDFPage, StandardFonts } from 'pdf-lib';

/** A PNG picture of one pixel. */
export const dot = Uint8Array.from(
  atob('iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg=='),
  (sign) => sign.charCodeAt(0),
);

/** Makes a document as Word writes it: title, headings, a list, a footnote and two pictures. */
export async function makeDocx(): Promise<Uint8Array> {
  const picture = () =>
    new Paragraph({
      children: [new ImageRun({ type: 'png', data: dot, transformation: { width: 200, height: 100 } })],
    });
  const document = new Document({
    footnotes: { 1: { children: [new Paragraph('So Mr. Falk says.')] } },
    numbering: {
      config: [
        {
          reference: 'steps',
          levels: [{ level: 0, format: 'decimal', text: '%1.', alignment: AlignmentType.START }],
        },
      ],
    },
    sections: [
      {
        children: [
          new Paragraph({ text: 'The Marigold at Rest', heading: HeadingLevel.HEADING_1 }),
          new Paragraph({
            children: [
              new TextRun('The ferry is '),
              new TextRun({ text: 'old', bold: true }),
              new TextRun(' but she runs well'),
              new FootnoteReferenceRun(1),
              new TextRun('.'),
            ],
          }),
          picture(),
          new Paragraph({ text: 'What she needs', heading: HeadingLevel.HEADING_2 }),
          new Paragraph({ text: 'red paint', bullet: { level: 0 } }),
          new Paragraph({ text: 'a new rope', bullet: { level: 0 } }),
          new Paragraph({ text: 'Scrub the deck.', numbering: { reference: 'steps', level: 0 } }),
          picture(),
          new Paragraph('Ines & Otto will paint her <soon>.'),
        ],
      },
    ],
  });
  return new Uint8Array(await Packer.toBuffer(document));
}

/** The paragraphs of `makePdf`. One word is divided at the end of a line, and one word keeps its hyphen. */
export const pdfParagraphs = [
  'The wind got up in the night and by six the ferry could not leave the quay. Bram sat in the shed with his lamp and a tin of fish, and he let the rain hit the roof.',
  'Wilma had a plan. She would ring the bell at the end of the wall, so that any crew still out in the bay could find the gap. It was a well-known trick, and it was a good one.',
  'At ten the last of the nets came in. Not one man was lost, and the whole town went to bed glad.',
];

/** Makes two pages of a printed report, with a running head, page numbers, a heading, indented paragraphs and a list. */
export async function makePdf(): Promise<Uint8Array> {
  const pdf = await PDFDocument.create();
  const font = await pdf.embedFont(StandardFonts.TimesRoman);
  const size = 12;
  let page: PDFPage | undefined;
  let y = 0;
  const newPage = (): PDFPage => {
    const made = pdf.addPage([420, 190]);
    const n = pdf.getPageCount();
    made.drawText('The Tarn Quay Post', { x: 150, y: 170, size: 9, font });
    made.drawText(`${n}`, { x: 205, y: 14, size: 9, font });
    y = 140;
    return made;
  };
  const write = (text: string, x: number, letters = size): void => {
    if (!page || y < 40) page = newPage();
    page.drawText(text, { x, y, size: letters, font });
    y -= letters * 1.25;
  };
  write('A Wild Night', 40, 20);
  y -= 6;
  for (const paragraph of pdfParagraphs)
    wrap(paragraph, font, size, 340, 14).forEach((line, n) => {
      write(line, n === 0 ? 54 : 40);
    });
  for (const item of ['• one bell', '• six nets']) write(item, 54);
  const image = await pdf.embedPng(await makePicture());
  page!.drawImage(image, { x: 300, y: 30, width: 40, height: 40 });
  return pdf.save();
}

/** Breaks lines like a typesetter, dividing a long word if possible: lan-tern. */
function wrap(text: string, font: PDFFont, size: number, width: number, indent = 0): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const room = lines.length === 0 ? width - indent : width;
    const fits = (tried: string) => font.widthOfTextAtSize(tried, size) <= room;
    const longer = line === '' ? word : `${line} ${word}`;
    if (fits(longer)) {
      line = longer;
      continue;
    }
    const half = Math.ceil(word.length / 2);
    const at = word.includes('-') ? word.indexOf('-') + 1 : half;
    const head = word.includes('-') ? word.slice(0, at) : `${word.slice(0, at)}-`;
    if (word.length >= 5 && /^[\p{L}-]+$/u.test(word) && fits(`${line} ${head}`)) {
      lines.push(`${line} ${head}`);
      line = word.slice(at);
    } else {
      lines.push(line);
      line = word;
    }
  }
  return [...lines, line];
}

/**
 * Makes a page with columns like a newsletter, under a heading across all columns. The text is drawn column by column
 * from the left, or row by row across the columns.
 */
export async function makeColumns(
  columns: readonly string[],
  order: 'columns' | 'rows' = 'columns',
  { gutter = 30, heading = '' } = {},
): Promise<Uint8Array> {
  const pdf = await PDFDocument.create();
  const font = await pdf.embedFont(StandardFonts.Helvetica);
  const page = pdf.addPage([60 + columns.length * (160 + gutter), 300]);
  if (heading) page.drawText(heading, { x: 30, y: 275, size: 18, font });
  const lines = columns.flatMap((text, column) =>
    wrap(text, font, 10, 160).map((line, n) => ({ line, n, x: 30 + column * (160 + gutter) })),
  );
  const drawn =
    order === 'rows' ? [...lines].sort((one, other) => one.n - other.n || one.x - other.x) : lines;
  for (const { line, n, x } of drawn) page.drawText(line, { x, y: 250 - n * 13, size: 10, font });
  return pdf.save();
}

/** Makes a table of short cells, drawn row by row. */
export async function makeTable(rows: readonly (readonly string[])[]): Promise<Uint8Array> {
  const pdf = await PDFDocument.create();
  const font = await pdf.embedFont(StandardFonts.Helvetica);
  const page = pdf.addPage([420, 300]);
  for (const [n, row] of rows.entries())
    for (const [column, cell] of row.entries())
      page.drawText(cell, { x: 30 + column * 120, y: 260 - n * 13, size: 10, font });
  return pdf.save();
}

/** Makes pages that consist of pictures, like those of a scanner. */
export async function makeScan(): Promise<Uint8Array> {
  const pdf = await PDFDocument.create();
  const image = await pdf.embedPng(await makePicture());
  for (const _ of [1, 2]) pdf.addPage([300, 400]).drawImage(image, { x: 0, y: 0, width: 300, height: 400 });
  return pdf.save();
}

/** Makes a PDF that asks for an unknown password (ISO 32000-1, 7.6.3: the standard handler). */
export async function makeLockedPdf(): Promise<Uint8Array> {
  const pdf = await PDFDocument.create();
  pdf.addPage();
  const { context } = pdf;
  const letters = (byte: string) => PDFHexString.of(byte.repeat(32));
  context.trailerInfo.Encrypt = context.register(
    context.obj({ Filter: PDFName.of('Standard'), V: 1, R: 2, O: letters('5a'), U: letters('a5'), P: -44 }),
  );
  context.trailerInfo.ID = context.obj([PDFHexString.of('ab'.repeat(16)), PDFHexString.of('ab'.repeat(16))]);
  return pdf.save({ useObjectStreams: false });
}

/** Makes a grey PNG picture of 64 by 64 pixels. */
async function makePicture(): Promise<Uint8Array> {
  const { deflateSync, crc32 } = await import('node:zlib');
  const chunk = (kind: string, data: Uint8Array): Buffer => {
    const body = Buffer.concat([Buffer.from(kind), data]);
    const whole = Buffer.alloc(body.length + 8);
    whole.writeUInt32BE(data.length, 0);
    body.copy(whole, 4);
    whole.writeUInt32BE(crc32(body), body.length + 4);
    return whole;
  };
  const head = Buffer.alloc(13);
  head.writeUInt32BE(64, 0);
  head.writeUInt32BE(64, 4);
  head[8] = 8;
  const dots = Buffer.alloc(65 * 64, 128);
  for (let row = 0; row < 64; row++) dots[row * 65] = 0;
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk('IHDR', head),
    chunk('IDAT', deflateSync(dots)),
    chunk('IEND', new Uint8Array()),
  ]);
}

/** A part of a book: the name and body of one document. */
export interface BookPart {
  readonly name: string;
  readonly label?: string;
  readonly body: string;
}

/** Makes an EPUB 3 book from its parts. `more`: further files of the book. */
export function makeEpub(
  parts: readonly BookPart[],
  more: Readonly<Record<string, Uint8Array>> = {},
): Uint8Array {
  const xhtml = (body: string) =>
    `<?xml version="1.0" encoding="UTF-8"?>\n<!DOCTYPE html>\n<html xmlns="http://www.w3.org/1999/xhtml" xmlns:epub="http://www.idpf.org/2007/ops"><head><title/><script src="x.js"/></head><body>${body}</body></html>`;
  const labelled = parts.filter(({ label }) => label);
  return zipSync({
    mimetype: [strToU8('application/epub+zip'), { level: 0 }],
    'META-INF/container.xml': strToU8(
      '<container xmlns="urn:oasis:names:tc:opendocument:xmlns:container"><rootfiles><rootfile full-path="OEBPS/book.opf" media-type="application/oebps-package+xml"/></rootfiles></container>',
    ),
    'OEBPS/book.opf': strToU8(
      `<package xmlns="http://www.idpf.org/2007/opf" version="3.0"><metadata xmlns:dc="http://purl.org/dc/elements/1.1/"><dc:title>The Bell on the Wall</dc:title><dc:creator>Wilma Falk</dc:creator></metadata>
       <manifest><item id="nav" href="nav.xhtml" properties="nav" media-type="application/xhtml+xml"/>${parts.map(({ name }) => `<item id="${name}" href="text/${name}%20x.xhtml" media-type="application/xhtml+xml"/>`).join('')}</manifest>
       <spine><itemref idref="nav"/>${parts.map(({ name }) => `<itemref idref="${name}"/>`).join('')}</spine></package>`,
    ),
    'OEBPS/nav.xhtml': strToU8(
      xhtml(
        `<nav epub:type="toc"><ol>${labelled.map(({ name, label }) => `<li><a href="text/${name}%20x.xhtml#top">${label}</a></li>`).join('')}</ol></nav>`,
      ),
    ),
    ...Object.fromEntries(
      parts.map(({ name, body }) => [`OEBPS/text/${name} x.xhtml`, strToU8(xhtml(body))]),
    ),
    ...more,
  });
}
