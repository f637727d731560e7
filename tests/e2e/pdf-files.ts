import {
  degrees,
  drawObject,
  PDFDocument,
  popGraphicsState,
  pushGraphicsState,
  StandardFonts,
  scale,
} from 'pdf-lib';
import { storyParagraphs } from '../desk/pdf-layouts.ts';

/**
 * Returns a book with a number of pages. Each page begins with a heading such as “Part seven” and has texts of the
 * package.
 */
export async function makeBook(pages: number): Promise<Uint8Array> {
  const pdf = await PDFDocument.create();
  const font = await pdf.embedFont(StandardFonts.TimesRoman);
  pdf.setTitle('The Harbour Book');
  pdf.setAuthor('Wilma Falk');
  for (let n = 1; n <= pages; n++) {
    const page = pdf.addPage([420, 595]);
    page.drawText('The Harbour Book', { x: 160, y: 570, size: 9, font });
    page.drawText(`${n}`, { x: 205, y: 24, size: 9, font });
    page.drawText(`Part ${n}`, { x: 50, y: 530, size: 20, font });
    const words = storyParagraphs(n)
      .join(' ')
      .replace(/[^\x20-\x7e]/g, '')
      .split(/\s+/);
    let y = 500;
    let line = '';
    for (const word of words) {
      if (y < 60) break;
      const longer = line === '' ? word : `${line} ${word}`;
      if (font.widthOfTextAtSize(longer, 12) <= 320) line = longer;
      else {
        page.drawText(line, { x: 50, y, size: 12, font });
        y -= 16;
        line = word;
      }
    }
  }
  return pdf.save();
}

/** Returns a PDF with a number of empty pages. */
export async function makeEmpty(pages: number): Promise<Uint8Array> {
  const pdf = await PDFDocument.create();
  for (let n = 0; n < pages; n++) pdf.addPage([420, 595]);
  return pdf.save();
}

/** Returns two pages in which the word "lantern" and other words are divided at the ends of lines and pages. */
export async function makeDivided(): Promise<Uint8Array> {
  const pdf = await PDFDocument.create();
  const font = await pdf.embedFont(StandardFonts.TimesRoman);
  const draw = (page: ReturnType<typeof pdf.addPage>, lines: readonly string[]): void =>
    lines.forEach((line, n) => {
      page.drawText(line, { x: 40, y: 150 - n * 20, size: 16, font });
    });
  draw(pdf.addPage([260, 200]), [
    'Bram sat on the wall with a lan-',
    'tern and a big net in his hand-',
    'bag and let the rain hit his um-',
  ]);
  const last = pdf.addPage([260, 200]);
  draw(last, ['brella until it was ten.']);
  last.drawText('Up the margin', { x: 20, y: 20, size: 9, font, rotate: degrees(90) });
  return pdf.save();
}

/** Returns a page with only a black picture, compressed as a fax (ITU-T T.6). Each of its 64 rows equals the row before. */
export async function makeFax(): Promise<Uint8Array> {
  const pdf = await PDFDocument.create();
  const page = pdf.addPage([200, 200]);
  const rows = new Uint8Array(8).fill(255);
  const end = [0x00, 0x10, 0x01];
  const picture = pdf.context.stream(Uint8Array.from([...rows, ...end]), {
    Type: 'XObject',
    Subtype: 'Image',
    Width: 64,
    Height: 64,
    ColorSpace: 'DeviceGray',
    BitsPerComponent: 1,
    Filter: 'CCITTFaxDecode',
    DecodeParms: { K: -1, Columns: 64, Rows: 64, BlackIs1: true },
  });
  const name = page.node.newXObject('Fax', pdf.context.register(picture));
  page.pushOperators(pushGraphicsState(), scale(200, 200), drawObject(name), popGraphicsState());
  return pdf.save();
}

/** Returns a page that consists of a given PNG picture. */
export async function makeScanOf(png: Uint8Array): Promise<Uint8Array> {
  const pdf = await PDFDocument.create();
  const image = await pdf.embedPng(png);
  const { width, height } = image.scale(0.5);
  pdf.addPage([width, height]).drawImage(image, { x: 0, y: 0, width, height });
  return pdf.save();
}

/** Returns a PDF with a short text and a number of extra bytes. */
export async function makeLarge(bytes: number): Promise<Uint8Array> {
  const pdf = await PDFDocument.create();
  pdf.addPage([420, 300]).drawText('The ferry is late, and the gulls are glad.', { x: 40, y: 250, size: 14 });
  pdf.context.register(pdf.context.stream(new Uint8Array(bytes).map((_, n) => (n * 7919) % 251)));
  return pdf.save({ useObjectStreams: false });
}

/** Returns a form with one field to fill in. */
export async function makeForm(): Promise<Uint8Array> {
  const pdf = await PDFDocument.create();
  const page = pdf.addPage([420, 300]);
  page.drawText('Ask Mr. Falk to sign this for the ferry trip.', { x: 40, y: 250, size: 14 });
  const field = pdf.getForm().createTextField('name');
  field.setText('Wilma');
  field.addToPage(page, { x: 40, y: 200, width: 200, height: 24 });
  return pdf.save();
}
